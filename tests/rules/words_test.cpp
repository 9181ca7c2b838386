// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Names that say the same are judged alike, however they are written. Source of the words: common usage, no source (how
// people write on panel doors); what is judged of them: gfci_test.cpp, afci_test.cpp.
#include "codebook/stock/plain_words.h"
#include "codebook/stock/uses.h"
#include "job/job.h"
#include "protection_jobs.h"
#include "rules/directory/naming.h"

#include "catch.h"

#include <map>
#include <set>

using namespace made;

namespace {
// The first word of a row is what the others mean.
using Rows = std::vector<std::vector<std::string>>;

Rows const kRooms{
    {"Kitchen", "KITCHEN", "Kitchens", "Kichen", "Kitch", "Kit.", "Kitchenette", "Cuisine", "Cocina", "The kitchen"},
    {"Kitchen island", "Kitchen counter", "Kitchen peninsula", "Kitchen countertop", "kitchen counters", "Kit. counter",
     "Kitchen islands", "Kitchen penninsula", "Kitchen isl.", "Kit. ctr", "Breakfast bar"},
    {"Bathroom", "Bath", "Bathrooms", "Bathrm", "Washroom", "Powder room", "Ensuite", "Half bath", "Master bath",
     "Hall bath", "Upstairs bathroom", "Restroom", "Salle de bain", "Baño"},
    {"Garage", "GARAGE", "Garages", "Garrage", "Garge", "Garaje", "North garage"},
    {"Outdoors", "Outside", "Exterior", "Patio", "Deck", "Porch", "Balcony", "Terrace", "Yard", "Back yard", "Outdor",
     "Driveway", "Terrasse", "Front porch", "Decks", "Ext.", "Lanai"},
    {"Laundry", "Laundry room", "Laundary", "LAUNDRY", "Lndry", "Buanderie", "Lavandería"},
    {"Bedroom", "Bedrooms", "Bedrm", "Bdrm 2", "Guest room", "Master bedroom", "Nursery", "Chambre", "Recámara",
     "North bedroom"},
    {"Living room", "Livingroom", "Living rm", "Family room", "Familyroom", "Den", "Office", "Salon", "Bonus room"},
    {"Hall", "Hallway", "Halway", "Foyer", "Entry", "Halls", "Pasillo"},
    {"Basement", "Bsmt", "Basment", "Basements", "Cellar", "Sous-sol", "Sótano"},
    {"Unfinished basement", "Basement, unfinished", "Basement (not finished)", "Unfinished bsmt"},
    {"Finished basement", "Basement, finished", "Basement (finished)", "Finished bsmt", "Finished part of basement"},
    {"Crawl space", "Crawlspace", "CRAWL SPACE", "Crawl spaces"},
    {"Attic", "Attics", "Grenier", "Ático"},
};

Rows const kThings{
    {"Receptacles", "Receptacle", "Outlets", "Outlet", "Plugs", "plug", "Sockets", "Recepts", "Recepticles",
     "Receptical", "Rcpts", "RECEPTACLES", "GFCI", "GFI outlets", "Outletts", "Prises", "Enchufes", "Tomacorrientes"},
    {"Lights", "Light", "Lighting", "Lites", "Lts", "LIGHTS", "Ligths", "Lamps", "Luminaires", "Éclairage", "Luces"},
    {"Lights and receptacles", "Receptacles and lights", "Lights & plugs", "Plugs + lites", "Outlets/lights",
     "Lights, outlets", "Luces y enchufes", "Lts and recepts"},
    {"Refrigerator", "Fridge", "Refridgerator", "Frig", "Refrig.", "FRIDGES", "Nevera", "Réfrigérateur"},
    {"Dishwasher", "Dish washer", "DW", "D/W", "Dishwaser", "Lave-vaisselle", "Lavavajillas"},
    {"Microwave", "Micro wave", "Microwve", "Microwaves"},
    {"Freezer", "Frezer", "FREEZER", "Freezers", "Congélateur"},
    {"Overhead door opener", "Door opener", "Overhead door operator", "Door openers", "Dr. opener", "Door opnr"},
    {"Sump pump", "Sump", "Sumppump", "Sump pumps", "Sump pmp"},
    {"Pool pump", "Pump for pool", "Pool pumps", "Pool pmp"},
    {"Hydromassage tub", "Whirlpool tub", "Jetted tub", "Hydro-massage tub", "Whirlpool bath"},
    {"Central vacuum", "Central vac", "Central vaccum", "Vacuum, central", "Built-in vac"},
    {"Battery charger", "Battery chargers", "Charger for batteries", "Battery chargr"},
    {"Air handler", "Air handlers", "Indoor unit", "Fan coil", "Mini-split head", "Indoor head"},
    {"Furnace", "Furnance", "FURNACE", "Furnaces"},
    {"Smoke alarms", "Smoke alarm", "Smoke detectors", "Smk alarms"},
};

int words_in(Rows const& rows) {
    int all = 0;
    for (auto const& row : rows) all += static_cast<int>(row.size());
    return all;
}

// What both rules of protection say under one code of a circuit of these words, as a reader of the file takes them.
std::string judged_as(std::string const& name, std::string const& room, std::string_view edition) {
    auto c = one_pole("K1").called(name, room).with([](typed::Circuit& made) {
        made.use = guess_use(made.name, made.room, made.poles, {});
        made.use_guessed = !made.use.empty();
    });
    auto const made = home({c});
    return letter("gfci-needed", made, edition) + letter("afci-needed", made, edition);
}

// Every order in which people write a thing and its room.
std::vector<std::string> in_every_order(std::string const& thing, std::string const& room, std::string_view edition) {
    return {judged_as(thing + ", " + room, "", edition), judged_as(room + " " + thing, "", edition),
            judged_as(room + ": " + thing, "", edition), judged_as(thing, room, edition)};
}
} // namespace

TEST_CASE("words: fifty names a kind", "[words]") {
    REQUIRE(words_in(kRooms) >= 100);
    REQUIRE(words_in(kThings) >= 100);
    std::set<std::string> once;
    for (Rows const* rows : {&kRooms, &kThings})
        for (auto const& row : *rows)
            for (auto const& word : row) REQUIRE(once.insert(word).second);
}

TEST_CASE("words: the same thing in the same room is judged alike, in every order and spelling", "[words]") {
    auto const edition = GENERATE("NEC 2017", "NEC 2023", "CE 2021");
    CAPTURE(edition);
    std::map<std::string, std::string> verdict_of; // by what is meant
    for (auto const& rooms : kRooms)
        for (auto const& things : kThings) {
            auto const meant = judged_as(things[0] + ", " + rooms[0], "", edition);
            verdict_of[things[0] + rooms[0]] = meant;
            for (auto const& room : rooms)
                for (auto const& got : in_every_order(things[0], room, edition)) {
                    CAPTURE(things[0], room);
                    REQUIRE(got == meant);
                }
            for (auto const& thing : things)
                for (auto const& got : in_every_order(thing, rooms[0], edition)) {
                    CAPTURE(thing, rooms[0]);
                    REQUIRE(got == meant);
                }
        }
    // The tables tell verdicts apart, so a word that is not known is seen.
    std::set<std::string> different;
    for (auto const& [what, verdict] : verdict_of) different.insert(verdict);
    REQUIRE(different.size() >= 4);
    REQUIRE(judged_as("Zorbles, Bathroom", "", edition) != verdict_of["ReceptaclesBathroom"]);
    REQUIRE(judged_as("Receptacles, Zorble", "", edition) != verdict_of["ReceptaclesBathroom"]);
}

TEST_CASE("words: each with each, spelled and ordered as it comes", "[words]") {
    // Of all pairs of a spelling of the thing and one of the room a walk that meets each word with every row.
    auto const edition = GENERATE("NEC 2020", "CE 2024");
    CAPTURE(edition);
    std::size_t step = 0;
    for (auto const& rooms : kRooms)
        for (auto const& things : kThings) {
            auto const meant = judged_as(things[0] + ", " + rooms[0], "", edition);
            for (std::size_t i = 0; i < std::max(rooms.size(), things.size()); ++i, ++step) {
                auto const& room = rooms[(i + step) % rooms.size()];
                auto const& thing = things[i % things.size()];
                CAPTURE(thing, room);
                auto const got = in_every_order(thing, room, edition);
                REQUIRE(got[step % got.size()] == meant);
            }
        }
}

TEST_CASE("words: a place alone and a thing alone are vague, however they are spelled", "[words][dir]") {
    for (auto const& row : kRooms)
        for (auto const& word : row) {
            if (row[0] == "Kitchen island" || row[0] == "Laundry") continue; // these tell what is there
            CAPTURE(word);
            auto const told = says(word, "");
            CHECK(told.place);
            CHECK_FALSE(told.thing);
        }
    for (std::size_t i : {0u, 1u})
        for (auto const& word : kThings[i]) {
            CAPTURE(word);
            auto const told = says(word, "");
            CHECK(told.thing);
            CHECK_FALSE(told.place);
        }
}

TEST_CASE("words: only spellings that are known are taken for another word", "[words]") {
    for (auto const& [typed, usual] : std::vector<std::pair<std::string, std::string>>{{"recepticle", "receptacle"},
                                                                                       {"lts", "lights"},
                                                                                       {"livingroom", "living room"},
                                                                                       {"bsmt", "basement"},
                                                                                       {"theater", "theater"},
                                                                                       {"heather", "heather"},
                                                                                       {"", ""},
                                                                                       {"zorble", "zorble"}})
        CHECK(usual_spelling(typed) == usual);
    CHECK(plain_words("Kit recepticles, A/C & Éclairage") ==
          std::vector<std::string>{"kitchen", "receptacles", ",", "ac", "", "eclairage"});
}
