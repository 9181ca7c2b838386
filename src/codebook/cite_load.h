// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The sections of a load calculation: rows of cite.cpp's table.
#pragma once

#include "codebook/cite.h"

namespace legwork {

namespace load_sections {
using Sections = std::array<std::string_view, 3>;
constexpr Sections all(std::string_view s) { return {s, s, s}; }
inline constexpr Sections silent{};
inline constexpr auto seen = Source::seen, memory = Source::memory, practice = Source::practice;
} // namespace load_sections

inline constexpr auto kLoadCitations = [] {
    using namespace load_sections;
    // topic, NEC 2017 2020 2023, CE 2018 2021 2024, sources. The 2023 edition renumbered 220.12 and 220.40 to 220.49.
    return std::array{
        Citation{"load-service", all("220.40, 230.42 (numbers from memory)"), all("8-104, 8-200"), seen, seen},
        Citation{"load-service/floor-area", {"220.12", "220.14(J)", "220.41"}, all("8-200(1)(a)(i), (ii)"), seen, seen},
        Citation{"load-service/small-appliance", all("220.52(A)"), silent, seen, practice},
        Citation{"load-service/laundry", all("220.52(B)"), silent, seen, practice},
        Citation{
            "load-service/lighting-demand", {"Table 220.42", "Table 220.42", "Table 220.45"}, silent, seen, practice},
        Citation{"load-service/fixed", all("220.53"), silent, seen, practice},
        Citation{"load-service/appliance", all("220.14(A) (number from memory)"), all("8-200(1)(a)(vii)"), seen, seen},
        Citation{"load-service/dryer", all("220.54"), silent, seen, practice},
        Citation{"load-service/cooking", all("220.55"), all("8-200(1)(a)(iv)"), seen, seen},
        Citation{"load-service/heat", all("220.51"), all("62-118(3)"), seen, seen},
        Citation{"load-service/central-heat", all("220.51"), all("8-200(1)(a)(iii)"), seen, seen},
        Citation{"load-service/cooling", all("220.60"), all("8-200(1)(a)(iii)"), seen, seen},
        Citation{"load-service/never-together", all("220.60"), all("8-106(3)"), seen, seen},
        Citation{"load-service/motor", all("220.50, 430.24"), all("28-108 (number from memory)"), seen, memory},
        Citation{"load-service/vehicle",
                 {"625.41 (number from memory)", "625.41 (number from memory)", "220.57"},
                 all("8-200(1)(a)(vi)"),
                 seen,
                 seen},
        Citation{"load-service/in-full", silent, all("8-200(1)(a)(v)"), practice, seen},
        Citation{"load-service/managed",
                 {"750.30 (number from memory)", "750.30 (number from memory)", "220.70 (number from memory)"},
                 {"8-106(10), (11)", "8-500", "8-500"},
                 memory,
                 seen},
        Citation{"load-service/neutral", all("220.61"), silent, seen, practice},
        Citation{"load-service/neutral-wye", all("220.61(C)(1) (number from memory)"), silent, memory, practice},
        Citation{"load-service/optional", all("220.82(B)"), silent, seen, practice},
        Citation{"load-service/optional-heat", all("220.82(C)"), silent, seen, practice},
        Citation{"load-service/existing", all("220.83(A)"), silent, seen, practice},
        Citation{"load-service/existing-heat", all("220.83(B)"), silent, seen, practice},
        Citation{"load-service/measured", all("220.87"), all("8-106(8)"), seen, memory},
        Citation{"load-service/minimum", all("230.79(C)"), all("8-200(1)(b)"), seen, seen},
        Citation{"load-service/continuous", all("215.2(A)(1), 230.42(A) (numbers from memory)"), all("8-104"), seen,
                 seen},
        Citation{"load-service/presumed", silent, all("8-104(3)"), practice, memory},
        Citation{"load-service/listed", all("220.40 (number from memory)"), all("8-106(1) (number from memory)"), seen,
                 seen},
        Citation{"load-service/outlets",
                 {"220.14(I), 220.44 (numbers from memory)", "220.14(I), 220.44 (numbers from memory)",
                  "220.14(I), 220.47 (numbers from memory)"},
                 all("8-106(1) (number from memory)"),
                 memory,
                 memory},
        Citation{"load-service/volts", all("220.5(A)"), all("8-100"), seen, seen},
        Citation{"load-service/half-amps", all("220.5(B)"), silent, seen, practice},
        Citation{"load-service/size", all("240.6(A)"), all("Table 13"), seen, memory},
        Citation{"load-service/wire",
                 {"Table 310.15(B)(16)", "Table 310.16", "Table 310.16"},
                 all("Tables 2 and 4"),
                 seen,
                 seen},
        Citation{
            "load-service/dwelling-wire", {"310.15(B)(7)", "310.12", "310.12"}, all("4-004, Table 39"), seen, memory},
    };
}();

} // namespace legwork
