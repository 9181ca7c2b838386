// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/cables.h"
#include "codebook/stock/strips.h"

#include "units/power_cable.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
// Colours and jackets of extra-low-voltage cables: common practice, no source.
struct NamedCable {
    std::string_view name;
    std::optional<Gauge> gauge;
    std::string_view colors; // comma-separated
    std::string_view jacket;
    bool strip = false; // made for lighting strips
};

constexpr std::string_view kFourPairs = "white/blue,blue,white/orange,orange,white/green,green,white/brown,brown";
constexpr std::string_view kNoJacket{};
constexpr std::array kNamed{
    NamedCable{"22/2 lighting strip", Gauge::awg22, "red,black", kNoJacket, true},
    NamedCable{"22/4 lighting strip", Gauge::awg22, "black,red,green,blue", kNoJacket, true},
    NamedCable{"20/2 lighting strip", Gauge::awg20, "red,black", kNoJacket, true},
    NamedCable{"18/2 lighting strip", Gauge::awg18, "red,black", kNoJacket, true},
    NamedCable{"18/4 lighting strip", Gauge::awg18, "black,red,green,blue", kNoJacket, true},
    NamedCable{"18/5 lighting strip", Gauge::awg18, "black,red,green,blue,white", kNoJacket, true},
    NamedCable{"16/2 lighting strip", Gauge::awg16, "red,black", kNoJacket, true},
    NamedCable{"16/4 lighting strip", Gauge::awg16, "black,red,green,blue", kNoJacket, true},
    NamedCable{"18/2 thermostat", Gauge::awg18, "red,white", "brown"},
    NamedCable{"18/3 thermostat", Gauge::awg18, "red,white,green", "brown"},
    NamedCable{"18/4 thermostat", Gauge::awg18, "red,white,green,yellow", "brown"},
    NamedCable{"18/5 thermostat", Gauge::awg18, "red,white,green,yellow,blue", "brown"},
    NamedCable{"18/6 thermostat", Gauge::awg18, "red,white,green,yellow,blue,brown", "brown"},
    NamedCable{"18/7 thermostat", Gauge::awg18, "red,white,green,yellow,blue,brown,orange", "brown"},
    NamedCable{"18/8 thermostat", Gauge::awg18, "red,white,green,yellow,blue,brown,orange,black", "brown"},
    NamedCable{"20/2 thermostat", Gauge::awg20, "red,white", "brown"},
    NamedCable{"20/5 thermostat", Gauge::awg20, "red,white,green,yellow,blue", "brown"},
    NamedCable{"18/2 bell", Gauge::awg18, "red,white", "white"},
    NamedCable{"20/2 bell", Gauge::awg20, "red,white", "white"},
    NamedCable{"22/2 alarm", Gauge::awg22, "red,black", "white"},
    NamedCable{"22/4 alarm", Gauge::awg22, "red,black,yellow,green", "white"},
    NamedCable{"18/2 alarm", Gauge::awg18, "red,black", "red"},
    NamedCable{"18/2 speaker", Gauge::awg18, "red,black", "white"},
    NamedCable{"16/2 speaker", Gauge::awg16, "red,black", "white"},
    NamedCable{"16/4 speaker", Gauge::awg16, "red,black,white,green", "white"},
    NamedCable{"14/2 speaker", Gauge::awg14, "red,black", "white"},
    NamedCable{"cat5e", Gauge::awg24, kFourPairs, "blue"},
    NamedCable{"cat6", Gauge::awg23, kFourPairs, "blue"},
    NamedCable{"cat6a", Gauge::awg23, kFourPairs, "blue"},
    NamedCable{"coax", std::nullopt, "", "black"},
    NamedCable{"fibre", std::nullopt, "", "yellow"},
};

std::vector<std::string> split(std::string_view list) {
    std::vector<std::string> parts;
    while (!list.empty()) {
        auto const comma = std::min(list.find(','), list.size());
        parts.emplace_back(list.substr(0, comma));
        list.remove_prefix(std::min(comma + 1, list.size()));
    }
    return parts;
}

// Colours of building cable: makers' habit on both sides of the border (black, red, white; a fourth is blue).
std::vector<WireColor> building_colors(int insulated) {
    if (insulated == 2) return wire_colors({"black", "white"});
    if (insulated == 3) return wire_colors({"black", "red", "white"});
    return wire_colors({"black", "red", "blue", "white"});
}

// Makers' habit, no code rule: 14 white, 12 yellow, 10 orange, 8 and larger black.
std::string building_jacket(Gauge gauge, CableType type) {
    if (type == CableType::armoured || type == CableType::metal_clad) return {}; // bare armour
    if (type == CableType::uf) return "grey";
    if (type != CableType::indoor) return "black";
    if (gauge == Gauge::awg14) return "white";
    if (gauge == Gauge::awg12) return "yellow";
    if (gauge == Gauge::awg10) return "orange";
    return "black";
}

std::optional<CableKind> building_cable(std::string_view name) {
    auto const cable = power_cable(name);
    if (!cable) return std::nullopt;
    auto const [gauge, insulated, type] = *cable;
    return CableKind{std::string(name),           gauge, insulated, building_colors(insulated), true, true, type,
                     building_jacket(gauge, type)};
}
} // namespace

std::optional<CableKind> cable_kind(std::string_view name) {
    if (auto power = building_cable(name)) return power;
    auto const at = std::ranges::find(kNamed, name, &NamedCable::name);
    if (at == kNamed.end()) return std::nullopt;
    auto colors = wire_colors(split(at->colors));
    auto const insulated = static_cast<int>(colors.size());
    return CableKind{std::string(name),      at->gauge, insulated, std::move(colors), false, false, CableType::indoor,
                     std::string(at->jacket)};
}

CableKind const* cable_kind_named(std::string_view name) {
    static std::vector<CableKind> const all = [] {
        std::vector<CableKind> kinds;
        for (auto const& g : kGauges)
            for (char const insulated : {'2', '3', '4'}) {
                auto const plain = std::string(g.name) + "/" + insulated;
                if (auto const kind = building_cable(plain)) kinds.push_back(*kind);
                for (auto const& t : kCableTypes)
                    if (auto const kind = building_cable(plain + " " + std::string(t.name))) kinds.push_back(*kind);
            }
        for (NamedCable const& n : kNamed) kinds.push_back(*cable_kind(n.name));
        return kinds;
    }();
    auto const at = std::ranges::find(all, name, &CableKind::name);
    return at == all.end() ? nullptr : &*at;
}

bool is_strip_cable(CableKind const& kind) {
    auto const at = std::ranges::find(kNamed, kind.name, &NamedCable::name);
    return at != kNamed.end() && at->strip;
}

std::vector<std::string> named_cable_kinds() {
    std::vector<std::string> names;
    for (NamedCable const& n : kNamed) names.emplace_back(n.name);
    return names;
}

} // namespace legwork
