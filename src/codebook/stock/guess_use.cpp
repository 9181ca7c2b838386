// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A use from the words of a name. Phrases are tried from the top: a thing before a place, a place before plain
// receptacles. Words fit whole, plurals too; a trailing * takes any ending. "Boiler room" is a place, not a boiler.
#include "codebook/stock/receptacles.h"
#include "codebook/stock/uses.h"

#include <algorithm>
#include <array>
#include <optional>

namespace legwork {

namespace {
struct Phrase {
    std::string_view words, use;
    bool place = false; // needs a word for receptacles beside it, in the name; its own may stand in the room
};

constexpr std::array kPhrases{
    Phrase{"light", "lighting"},
    Phrase{"lighting", "lighting"},
    Phrase{"lamp", "lighting"},
    Phrase{"luminaire", "lighting"},
    Phrase{"éclairage", "lighting"},
    Phrase{"lumière", "lighting"},
    Phrase{"iluminación", "lighting"},
    Phrase{"luz", "lighting"},
    Phrase{"luces", "lighting"},
    Phrase{"generator", "generator inlet"},
    Phrase{"inlet", "generator inlet"},
    Phrase{"surge", "surge protector"},
    Phrase{"solar", "solar"},
    Phrase{"photovoltaic", "solar"},
    Phrase{"battery charger", "appliance"},
    Phrase{"battery", "battery"},
    Phrase{"vehicle charg*", "vehicle charger"},
    Phrase{"car charg*", "vehicle charger"},
    Phrase{"ev charg*", "vehicle charger"},
    Phrase{"evse", "vehicle charger"},
    Phrase{"hot tub", "hot tub"},
    Phrase{"spa tub", "hot tub"},
    Phrase{"welder", "welder"},
    Phrase{"welding", "welder"},
    Phrase{"tankless", "tankless water heater"},
    Phrase{"instant water*", "tankless water heater"},
    Phrase{"water heater", "water heater"},
    Phrase{"hot water tank", "water heater"},
    Phrase{"hot water", "water heater"},
    Phrase{"sink heater", "water heater"},
    Phrase{"chauffe eau", "water heater"},
    Phrase{"calentador de agua", "water heater"},
    Phrase{"heat pump", "heat pump"},
    Phrase{"thermopompe", "heat pump"},
    Phrase{"bomba de calor", "heat pump"},
    Phrase{"mini split", "heat pump"},
    Phrase{"backup heat*", "backup heat"},
    Phrase{"back up heat*", "backup heat"},
    Phrase{"heat strip", "backup heat"},
    Phrase{"air condition*", "air conditioner"},
    Phrase{"air handler", "furnace"},
    Phrase{"furnace", "furnace"},
    Phrase{"boiler", "boiler"},
    Phrase{"floor heat*", "floor heating"},
    Phrase{"floor warm*", "floor heating"},
    Phrase{"heated floor", "floor heating"},
    Phrase{"radiant floor", "floor heating"},
    Phrase{"baseboard", "baseboard"},
    Phrase{"plinthe", "baseboard"},
    Phrase{"well pump", "well pump"},
    Phrase{"bomba de pozo", "well pump"},
    Phrase{"water pump", "well pump"},
    Phrase{"irrigation pump", "well pump"},
    Phrase{"booster pump", "well pump"},
    Phrase{"jet pump", "well pump"},
    Phrase{"sump", "sump pump"},
    Phrase{"central vac*", "central vacuum"},
    Phrase{"aspirateur central", "central vacuum"},
    Phrase{"aspiradora central", "central vacuum"},
    Phrase{"smoke", "smoke alarms"},
    Phrase{"co alarm", "smoke alarms"},
    Phrase{"dishwasher", "dishwasher"},
    Phrase{"dish washer", "dishwasher"},
    Phrase{"lave vaisselle", "dishwasher"},
    Phrase{"lavavajillas", "dishwasher"},
    Phrase{"disposer", "disposer"},
    Phrase{"disposal", "disposer"},
    Phrase{"garburator", "disposer"},
    Phrase{"microwave", "microwave"},
    Phrase{"refrigerator", "refrigerator"},
    Phrase{"fridge", "refrigerator"},
    Phrase{"réfrigérateur", "refrigerator"},
    Phrase{"frigo", "refrigerator"},
    Phrase{"refrigerador", "refrigerator"},
    Phrase{"nevera", "refrigerator"},
    Phrase{"freezer", "freezer"},
    Phrase{"congélateur", "freezer"},
    Phrase{"congelador", "freezer"},
    Phrase{"range hood", "appliance"},
    Phrase{"cooktop", "cooktop"},
    Phrase{"hob", "cooktop"},
    Phrase{"range", "range"},
    Phrase{"cookstove", "range"},
    Phrase{"cuisinière", "range"},
    Phrase{"oven", "oven"},
    Phrase{"horno", "oven"},
    Phrase{"dryer", "dryer"},
    Phrase{"sécheuse", "dryer"},
    Phrase{"secadora", "dryer"},
    Phrase{"laveuse", "laundry"},
    Phrase{"lavadora", "laundry"},
    Phrase{"washer", "laundry"},
    Phrase{"washing machine", "laundry"},
    Phrase{"laundry", "laundry"},
    Phrase{"laundry room", "laundry"},
    Phrase{"bath fan", "bath fan"},
    Phrase{"bathroom fan", "bath fan"},
    Phrase{"bath exhaust", "bath fan"},
    Phrase{"bathroom exhaust", "bath fan"},
    Phrase{"network", "network"},
    Phrase{"router", "network"},
    Phrase{"modem", "network"},
    Phrase{"power supply", "power supply"},
    Phrase{"led driver", "power supply"},
    Phrase{"subpanel", "feeder"},
    Phrase{"sub panel", "feeder"},
    Phrase{"feeder", "feeder"},
    Phrase{"heater", "heating"},
    Phrase{"heating", "heating"},
    Phrase{"chauffage", "heating"},
    Phrase{"kitchen counter", "kitchen counter"},
    Phrase{"counter", "kitchen counter"},
    Phrase{"comptoir", "kitchen counter"},
    Phrase{"bath", "bathroom", true},
    Phrase{"bathroom", "bathroom", true},
    Phrase{"washroom", "bathroom", true},
    Phrase{"outdoor", "outdoor", true},
    Phrase{"outside", "outdoor", true},
    Phrase{"exterior", "outdoor", true},
    Phrase{"patio", "outdoor", true},
    Phrase{"deck", "outdoor", true},
    Phrase{"dock", "outdoor", true},
    Phrase{"porch", "outdoor", true},
    Phrase{"garage", "garage", true},
    Phrase{"workshop", "workshop", true},
    Phrase{"shop", "workshop", true},
    Phrase{"tool", "workshop", true},
    Phrase{"receptacle", "receptacles"},
    Phrase{"outlet", "receptacles"},
    Phrase{"plug", "receptacles"},
    Phrase{"socket", "receptacles"},
    Phrase{"prise", "receptacles"},
    Phrase{"tomacorriente", "receptacles"},
    Phrase{"enchufe", "receptacles"},
};
constexpr std::array<std::string_view, 7> kReceptacleWords{"receptacle", "outlet",        "plug",   "socket",
                                                           "prise",      "tomacorriente", "enchufe"};

constexpr std::array<std::string_view, 5> kPlaces{"room", "house", "shed", "closet", "hut"};

// Lower case (of accented letters the capitals of UTF-8's Latin-1 part); blanks and punctuation as one blank, also in
// front and behind.
std::string folded(std::string_view text) {
    std::string out = " ";
    for (char const c : text) {
        auto const u = static_cast<unsigned char>(c);
        bool const letter = (u >= 'a' && u <= 'z') || (u >= 'A' && u <= 'Z') || (u >= '0' && u <= '9') || u >= 0x80;
        bool const capital = u >= 'A' && u <= 'Z';
        bool const accented = u >= 0x80 && u <= 0x9E && u != 0x97 && static_cast<unsigned char>(out.back()) == 0xC3;
        if (letter)
            out += capital || accented ? static_cast<char>(u + 0x20) : c;
        else if (out.back() != ' ')
            out += ' ';
    }
    if (out.back() != ' ') out += ' ';
    return out;
}

// What follows the phrase at its first place in the text, from the blank on; nothing when it is not there.
std::optional<std::string_view> after(std::string_view text, std::string_view phrase) {
    bool const any_ending = phrase.back() == '*';
    if (any_ending) phrase.remove_suffix(1);
    for (auto at = text.find(phrase); at != text.npos; at = text.find(phrase, at + 1)) {
        if (text[at - 1] != ' ') continue; // the text begins with a blank, the phrase does not
        auto rest = text.substr(at + phrase.size());
        if (any_ending) rest = rest.substr(rest.find(' '));
        if (rest.front() == 's') rest.remove_prefix(1);
        if (rest.front() == ' ') return rest;
    }
    return std::nullopt;
}

bool has(std::string_view text, std::string_view phrase) { return after(text, phrase).has_value(); }

// The phrase stands there and names the thing itself, not the room it is in.
bool has_thing(std::string_view text, std::string_view phrase) {
    auto const rest = after(text, phrase);
    return rest && std::ranges::none_of(kPlaces, [&](std::string_view place) {
               return rest->substr(1).starts_with(std::string(place) + " ");
           });
}

bool contradicts(Use const& use, int poles, std::vector<std::string> const& outlets) {
    if ((use.poles == Poles::one && poles != 1) || (use.poles == Poles::two && poles != 2)) return true;
    for (std::string const& name : outlets) {
        Receptacle const* r = receptacle_named(name);
        if (!r) continue;
        if (use.lighting || use.heating) return true;
        if (use.poles == Poles::one && r->hots != 1) return true;
        if (use.poles == Poles::two && r->hots != 2) return true;
    }
    return false;
}
} // namespace

std::string guess_use(std::string_view name, std::string_view room, int poles,
                      std::vector<std::string> const& outlets) {
    auto const words = folded(name), where = words + folded(room);
    if (words == " spare ") return "spare";
    bool const receptacles = std::ranges::any_of(kReceptacleWords, [&](auto w) { return has(words, w); });
    for (Phrase const& p : kPhrases) {
        if (p.place ? !receptacles || !has(where, p.words) : !has_thing(words, p.words)) continue;
        Use const* use = use_named(p.use);
        if (use && !contradicts(*use, poles, outlets)) return std::string(p.use);
    }
    return {};
}

} // namespace legwork
