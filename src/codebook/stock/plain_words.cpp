// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/plain_words.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
// Short forms and misspellings that stand on panel doors. No rule of distance between words: "theater" is no heater.
struct Spelling {
    std::string_view usual, typed; // of `typed` several, blanks between them
};
constexpr Spelling kSpellings[] = {
    {"receptacle", "recepticle receptical receptacal recepatcle receptable receptacel recptacle receptacl "
                   "recepter recepts recept recep recpt rcpt rcpts recp recps"},
    {"receptacles", "recepticles recepticals receptables receptacels recptacles"},
    {"outlet", "outlett oulet outlit outet"},
    {"outlets", "outletts oulets outlits outets"},
    {"light", "lite lt lght lihgt ligth"},
    {"lights", "lites lts lghts lihgts ligths lighs"},
    {"lighting", "liting ltg lightin"},
    {"kitchen", "kit kitch kichen kitchin kithcen ktchn kitchn"},
    {"counter", "countr couter"},
    {"peninsula", "penninsula penisula"},
    {"island", "isl iland islnd"},
    {"dining", "dinning"},
    {"dining room", "diningroom dinningroom"},
    {"living room", "livingroom livngroom"},
    {"family room", "familyroom"},
    {"bedroom", "bedrm bdrm bdroom bedrom beddroom"},
    {"bedrooms", "bedrms bdrms bedroms"},
    {"bathroom", "bathrm bthrm bathrom batheroom bathoom"},
    {"bathrooms", "bathrms bthrms bathroms"},
    {"washroom", "washrm"},
    {"powder room", "powderroom pwdr"},
    {"master", "mstr"},
    {"basement", "bsmt bsmnt basment basemnt basemet"},
    {"laundry", "laundary laundrey laundery lndry lndy"},
    {"garage", "garrage garge grage garag"},
    {"outdoor", "outdor outdr"},
    {"exterior", "ext exteriour exterier"},
    {"hallway", "halway"},
    {"attic", "atic attick"},
    {"utility", "utilty"},
    {"room", "rm"},
    {"washer", "wshr clotheswasher"},
    {"washer dryer", "wd"},
    {"dryer", "drier dryr"},
    {"dishwasher", "dw dishwaser dishwaher dishwsher diswasher dishwash"},
    {"disposer", "disp dispossal dispoal"},
    {"refrigerator", "refridgerator refrigirator refrigerater refrigorator refrig frig frige fridg"},
    {"freezer", "frezer freezr"},
    {"microwave", "microwve mircowave microwav"},
    {"water heater", "wh hwh hwt waterheater"},
    {"hot water", "hotwater"},
    {"heater", "htr heatr"},
    {"heat pump water heater", "hpwh"},
    {"heat pump", "heatpump"},
    {"furnace", "furnance furnase furnice"},
    {"air conditioner", "aircon airconditioner airconditioning"},
    {"condenser", "condensor condencer"},
    {"generator", "generater genarator"},
    {"charger", "charjer chargr"},
    {"opener", "opnr openner"},
    {"sump pump", "sumppump"},
    {"pump", "pmp"},
    {"vacuum", "vac vaccum vaccuum vacume vacum"},
    {"fireplace", "firplace firepalce"},
    {"hot tub", "hottub"},
    {"sauna", "suana"},
    {"whirlpool", "wirlpool"},
    {"smoke", "smk"},
    {"electric", "elec electr"},
    {"handler", "hndlr"},
    {"washing machine", "washmachine"},
    {"baseboard", "baseborad basebord"},
};

struct Typed {
    std::string_view typed, usual;
};
std::vector<Typed> sorted_spellings() {
    std::vector<Typed> all;
    for (Spelling const& row : kSpellings)
        for (auto rest = row.typed; !rest.empty();) {
            auto const blank = std::min(rest.find(' '), rest.size());
            all.push_back({rest.substr(0, blank), row.usual});
            rest.remove_prefix(std::min(blank + 1, rest.size()));
        }
    std::ranges::stable_sort(all, {}, &Typed::typed);
    return all;
}

bool is_word_byte(char c) {
    auto const u = static_cast<unsigned char>(c);
    return (u >= 'a' && u <= 'z') || (u >= 'A' && u <= 'Z') || (u >= '0' && u <= '9') || u >= 0x80;
}

bool joins(std::string_view word) {
    constexpr std::array<std::string_view, 6> joiners{"and", "et", "y", "or", "ou", "o"};
    return std::ranges::find(joiners, word) != joiners.end();
}

class Splitter {
public:
    explicit Splitter(std::string_view text) : text_(text) {
        for (at_ = 0; at_ < text_.size(); ++at_) take();
        end();
    }
    std::vector<std::string> words;

private:
    void take() {
        constexpr std::string_view plain = "aaaaaaaceeeeiiiidnooooo ouuuuytsaaaaaaaceeeeiiiidnooooo ouuuuyty";
        static_assert(plain.size() == 64);
        char const c = text_[at_];
        auto const next = at_ + 1 < text_.size() ? static_cast<unsigned char>(text_[at_ + 1]) : 0u;
        if (static_cast<unsigned char>(c) == 0xC3 && (next & 0xC0u) == 0x80u)
            word_ += plain[next - 0x80u], ++at_;
        else if (is_word_byte(c))
            word_ += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        else if (c == '/' && is_short_form_slash(text_, at_))
            ;
        else {
            end();
            if (std::string_view("/&+").find(c) != std::string_view::npos) words.emplace_back();
            if (std::string_view(",;:()").find(c) != std::string_view::npos) words.emplace_back(",");
        }
    }
    void end() {
        if (joins(word_))
            words.emplace_back();
        else
            for (auto rest = usual_spelling(word_); !rest.empty();) {
                auto const blank = std::min(rest.find(' '), rest.size());
                words.emplace_back(rest.substr(0, blank));
                rest.remove_prefix(std::min(blank + 1, rest.size()));
            }
        word_.clear();
    }

    std::string_view text_;
    std::size_t at_ = 0;
    std::string word_;
};
} // namespace

std::string_view usual_spelling(std::string_view word) {
    static std::vector<Typed> const all = sorted_spellings();
    auto const at = std::ranges::lower_bound(all, word, {}, &Typed::typed);
    return at != all.end() && at->typed == word ? at->usual : word;
}

bool is_short_form_slash(std::string_view text, std::size_t at) {
    auto const word_at = [&](std::size_t i) { return i < text.size() && is_word_byte(text[i]); };
    return at > 0 && text[at] == '/' && word_at(at - 1) && !word_at(at - 2) && word_at(at + 1) && !word_at(at + 2);
}

std::vector<std::string> plain_words(std::string_view text) { return Splitter(text).words; }

} // namespace legwork
