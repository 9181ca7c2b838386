// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a name says and whom it depends on. Sources: NEC 408.4(A) (specific purpose, told apart from all others, nothing
// that depends on occupancy), CE 2-100(3); the words themselves are common usage, no source.
#include "made_job.h"

#include "job/job.h"
#include "rules/directory/naming.h"

#include "catch.h"
#include <rapidcheck.h>

using namespace made;

namespace {
std::string vague(std::string name, std::string room = "") {
    return says("dir-vague", job({one_pole("L1").called(std::move(name), std::move(room))}));
}
std::string person(std::string name, std::string_view edition = "NEC 2023", std::string room = "") {
    return says("dir-person", job({one_pole("S1").called(std::move(name), std::move(room))}), edition);
}
} // namespace

TEST_CASE("dir-unnamed: every circuit has a name, a spare breaker excepted", "[check][directory]") {
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        REQUIRE(says("dir-unnamed", job({one_pole("L1").called("")}), edition) == "error L1");
        REQUIRE(says("dir-unnamed", job({one_pole("L1").called("  ", "Loft")}), edition) == "error L1");
        REQUIRE(says("dir-unnamed", job({one_pole("L1").called("x")}), edition).empty());
        REQUIRE(says("dir-unnamed", job({one_pole("L1").called("").use("spare")}), edition).empty());
    }
}

TEST_CASE("dir-vague: a thing without a place, a place without a thing", "[check][directory]") {
    auto const name =
        GENERATE("Lights", "Plugs", "lights", "LIGHTS", "Lights 2", "20 A plugs", "Receptacles", "General lighting",
                 "Misc", "Misc.", "Power", "GFCI", "Appliances", "Circuit 7", "Breaker", "???", "-", "Bedroom",
                 "Bedroom 1", "Upstairs", "North wall", "Garage", "Heaters", "Fan", "Sub-panel", "All the lights",
                 "LED lights", "Other stuff", "Electric baseboard heaters", "Lights & plugs", "Lites", "Lts",
                 "Recepticles", "Master bath", "Half bath", "Guest room", "Crawl space", "Addition", "Bonus room",
                 "Future", "Reserved", "Blank", "Not used", "Unused", "Control", "Finished basement",
                 // French, Spanish
                 "Lumières", "Éclairage", "Prises", "Prise de courant", "Chambre", "Salle de bain", "Sous-sol", "Luces",
                 "Enchufes", "Iluminación", "Cuarto", "Baño", "Recámara 2", "L'éclairage");
    CAPTURE(name);
    REQUIRE(vague(name) == "warning L1");
}

TEST_CASE("dir-vague: sound names are left alone", "[check][directory]") {
    auto const name = GENERATE(
        "Dishwasher", "Water heater", "Water heater, under stair", "Range", "Fridge", "Garage receptacles, bench wall",
        "Loft lights", "Lights, loft", "Bedroom receptacles", "Hall and stair receptacles",
        "Dining room, north receptacles", "Counter, left of sink", "Awning lights", "Bath fan", "Well pump", "A/C",
        "AC, roof", "HVAC", "EV charger", "Smoke alarms", "Sump pump", "Furnace", "Heat pump", "Hot tub",
        "Food waste disposer", "Shop tool outlets, south bench", "Trailer outlet, driveway", "Boot dryer receptacle",
        "Generator inlet, north wall", "Surge protector", "TV", "Bunk room baseboard heaters", "Sorting line",
        "Cold room compressor", "Kiln", "Welder outlet, east wall", "Outdoor receptacles", "Laundry", "Sauna",
        "Bath GFCI", "Kitchen appliances", "Shed power", "Porch light", "Lights in the cupola", "Doorbell",
        // French, Spanish, others
        "Lave-vaisselle", "Chauffe-eau", "Lumières du salon", "Prises, cuisine", "Éclairage de l'atelier",
        "Plinthes, sous-sol", "Luces de la cocina", "Enchufes, recámara norte", "Lavadora", "Calentador de agua",
        "冷蔵庫", "מטבח");
    CAPTURE(name);
    REQUIRE(vague(name).empty());
}

TEST_CASE("dir-vague: a spare with a wire and a load is none", "[check][directory]") {
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        auto const spare = [](std::string name) {
            return one_pole("S1").called(std::move(name)).use("spare").load(600_VA);
        };
        REQUIRE(says("dir-vague", job({spare("Spare")}), edition) == "warning S1");
        REQUIRE_THAT(found("dir-vague", job({spare("Spare")}), edition).at(0).message, Contains("a wire and a load"));
        auto const dryer = found("dir-vague", job({spare("Door opener")}), edition);
        REQUIRE_THAT(dryer.at(0).message, Contains("judged as door opener"));
        for (auto const change : {+[](typed::Circuit& c) { c.load.reset(); }, +[](typed::Circuit& c) { c.load = 0_VA; },
                                  +[](typed::Circuit& c) { c.run.clear(); }})
            REQUIRE(says("dir-vague", job({spare("Spare").with(change)}), edition).empty());
    }
    // It is judged by what it is: in a garage, with its opener.
    auto in_use = job({one_pole("S1").called("Garage door opener").use("spare").load(600_VA)});
    REQUIRE(says("gfci-needed", in_use, "NEC 2020") == "error S1");
}

TEST_CASE("dir-vague: name and room are read together", "[check][directory]") {
    REQUIRE(vague("Lights", "Loft").empty());
    REQUIRE(vague("Plugs", "Cuddy").empty()); // any room is a place
    REQUIRE(vague("Bedroom", "Bedroom") == "warning L1");
    REQUIRE(vague("Circuit 3", "Kitchen") == "warning L1");
    REQUIRE(vague("Lights", "?") == "warning L1");
    auto const at = job({one_pole("L1").called("Lights", "Loft"), one_pole("L2").called("Lights")});
    REQUIRE(says("dir-vague", at, "CE 2021") == "warning L2");
    REQUIRE(vague("") == ""); // dir-unnamed speaks
}

TEST_CASE("dir-vague: spares, mains and feeders", "[check][directory]") {
    REQUIRE(says("dir-vague", job({one_pole("S1").called("Spare").use("spare")})).empty());
    REQUIRE(says("dir-vague", job({two_pole("M").called("Main").use("main")})).empty());
    auto with_sub = job({two_pole("SP", 1).called("Workshop").use("feeder")});
    REQUIRE(says("dir-vague", with_sub) == "warning SP");
    auto sub = with_sub.panels[0];
    sub.name = "Workshop";
    sub.supply.reset();
    sub.feeder = typed::FeederName{"Main", "SP"};
    with_sub.panels.push_back(sub);
    REQUIRE(says("dir-vague", with_sub).empty()); // what it feeds is the panel
}

TEST_CASE("dir-duplicate: circuits that read the same, all in one finding", "[check][directory]") {
    auto const with = [](std::vector<std::pair<std::string, std::string>> names) {
        std::vector<typed::Circuit> all;
        for (auto const& [name, room] : names)
            all.push_back(one_pole("B" + std::to_string(all.size() + 1)).called(name, room));
        return job(all);
    };
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        REQUIRE(says("dir-duplicate", with({{"Bedroom", ""}, {"Hall lights", ""}, {"Bedroom", ""}}), edition) ==
                "warning B1 B3");
        REQUIRE(says("dir-duplicate", with({{"Lights", "Loft"}, {"Lights", "Hall"}}), edition).empty());
    }
    REQUIRE(says("dir-duplicate", with({{"Lights", "Loft"}, {" lights ", "LOFT"}, {"Lights.", "loft"}})) ==
            "warning B1 B2 B3");
    REQUIRE(says("dir-duplicate", with({{"Chambre, côté", ""}, {"chambre cote", ""}, {"A", ""}, {"A", ""}})) ==
            "warning B1 B2; warning B3 B4");
    REQUIRE(says("dir-duplicate", with({{"Bedroom 1", ""}, {"Bedroom 2", ""}})).empty());
    REQUIRE(says("dir-duplicate", with({{"", ""}, {"", ""}})).empty()); // dir-unnamed speaks
    auto two_panels = with({{"Bath lights", ""}, {"Bath lights", ""}});
    two_panels.panels.push_back(two_panels.panels[0]);
    two_panels.panels[1].name = "Cottage";
    two_panels.circuits[1].panel = "Cottage";
    REQUIRE(says("dir-duplicate", two_panels).empty()); // two directories
    auto spares = with({{"Spare", ""}, {"Spare", ""}});
    for (typed::Circuit& c : spares.circuits) c.use = "spare", c.load.reset();
    REQUIRE(says("dir-duplicate", spares).empty());
}

TEST_CASE("dir-person: a possessive and a room or an owner's thing", "[check][directory]") {
    auto const name =
        GENERATE("Rosa's room", "rosa's room", "Rosa\xE2\x80\x99s room", "Bill's bedroom", "Miller's workshop",
                 "The Millers' barn", "Dr. Chen's office", "Mom's office", "Receptacles in Rosa's room", "Tom's desk",
                 "Lights, Dad's shop", "James' studio", "Jo's computer", "Grandma's bedroom", "Zoë's closet");
    CAPTURE(name);
    REQUIRE(person(name) == "error S1");
    REQUIRE(person(name, "NEC 2017") == "error S1");
    REQUIRE(person(name, "CE 2024") == "warning S1");
    REQUIRE(says("dir-person", job({one_pole("S1").called(name).old()})) == "warning S1");
    REQUIRE(person("Receptacles", "NEC 2023", name) == "error S1");
}

TEST_CASE("dir-person: a guess", "[check][directory]") {
    auto const name =
        GENERATE("Kid 1", "kid 1 lights", "Kids room", "Kid's room", "Teen bedroom", "Mom office", "My office",
                 "Our bedroom lights", "Rosa's dishwasher", "Baby's room", "Chambre de Rosa", "Bureau d'Anne",
                 "Bureau d\xE2\x80\x99Élise", "Cuarto de Rosa", "Mi cuarto", "Hija, recámara");
    CAPTURE(name);
    REQUIRE(person(name) == "warning S1");
    REQUIRE(person(name, "CE 2024") == "warning S1");
}

TEST_CASE("dir-person: roles, rooms and places are nobody", "[check][directory]") {
    auto const name =
        GENERATE("Men's washroom", "Women's washroom lights", "Guest room", "Guests' bedroom", "Master's bedroom",
                 "Master bedroom", "Children's room", "St. John's hall", "St John's Hall", "Saint Mary's kitchen",
                 "Captain's cabin", "Lockkeeper's kitchen", "Queen's suite", "Chef's counter", "Owner's suite",
                 "Tenant's suite", "Teacher's office", "Boys' washroom", "Girls washroom", "Nursery",
                 "Bird's nest camera, barn", "TV's and lights, den", "GFCI's, garage", "1980's wing",
                 "'Kitchen' lights", "Joe's Diner kitchen", "Martha's Vineyard cottage lights", "Devil's Creek pump",
                 "Kitchen's lights", "Boathouse's north wall", "What's left, attic", "31' 6\" run to shed",
                 "Bath 1 & 2", "In-law suite", "Granny flat", "Chambre d'amis", "Chambre des maîtres",
                 "Chambre d'enfants", "Salle de bain", "Salle de lavage", "Bureau de poste", "Salle de Conférence",
                 "Cuarto de los niños", "Cuarto de lavado", "4-20 mA loop", "Dock's end light", "Prise de l'atelier",
                 "Dishwasher", "Counter, left of sink", "Miller & Son shop lights", "Our Lady chapel lights");
    CAPTURE(name);
    REQUIRE(person(name).empty());
    REQUIRE(person("Lights", "NEC 2023", name).empty());
}

TEST_CASE("dir-person: what it says", "[check][directory]") {
    auto const f = found("dir-person", job({one_pole("S1").called("Plugs, Rosa's room")}));
    REQUIRE_THAT(f.at(0).message, Contains("\"Rosa's room\""));
    REQUIRE(f.at(0).where.key == "name");
    auto const room = found("dir-person", job({one_pole("S1").called("Plugs", "Rosa's room")}));
    REQUIRE(room.at(0).where.key == "room");
}

TEST_CASE("any bytes are some words", "[check][directory]") {
    for (std::string const name : {"\xC3", "\xE2\x80", "\xF0\x9F", "\x80\x80", "'", "''", "-", "a\xC3", "d'", "l'",
                                   "s'", "'s", "\xC5", "\xF0\x9F\x92\xA1", "d\xE2\x80\x99", "Chambre d\xE2\x80\x99"}) {
        person_in(name);
        says(name, name);
        reads_as(name);
    }
    REQUIRE(reads_as("\xF0\x9F\x92\xA1 Lights").size() == 6);
    REQUIRE(rc::check("names are read whatever their bytes", [](std::string const& name, std::string const& room) {
        person_in(name);
        says(name, room);
        auto const words = reads_as(name);
        RC_ASSERT(reads_as(words) == words); // folding twice changes nothing
    }));
}
