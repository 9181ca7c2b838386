// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What is measured, and the targets it is held against. Times are of the processor; those of two things are taken in
// one run and reported as their ratio, since seconds differ between machines. Nothing here is asserted by a test.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace legwork::bench {

// Mean seconds of the processor, by the benchmark's name.
using Times = std::map<std::string, double>;

struct Row {
    std::string what, measured, target;
    bool met = false;
};
using Rows = std::vector<Row>;

// Each theme registers its benchmarks, then turns what was measured into rows.
void register_print();
Rows print_rows(Times const& times);
void register_balance();
Rows balance_rows(Times const& times);
void register_check();
Rows check_rows(Times const& times);

// Peak memory of child processes: measured apart, before this process grows.
Rows print_memory_rows();
Rows balance_limit_rows();
Rows check_search_rows();
Rows stop_rows();

} // namespace legwork::bench
