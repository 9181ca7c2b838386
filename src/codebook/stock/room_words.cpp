// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/room_words.h"

#include <algorithm>
#include <vector>

namespace legwork {

namespace {
using enum RoomPlace;

struct PlaceList {
    RoomPlaces places;
    std::string_view phrases; // commas between them
};
constexpr PlaceList kPlaceLists[] = {
    {{kitchen}, "kitchen,kitchenette,galley,scullery,cuisine,cuisinette,cocina,cocineta"},
    {{kitchen, counter},
     "kitchen counter,kitchen countertop,kitchen island,kitchen peninsula,kitchen ctr,breakfast "
     "bar,island,peninsula,ilot,isla"},
    {{counter}, "counter,countertop,comptoir,encimera,mostrador"},
    {{dining},
     "dining,dining room,breakfast nook,breakfast room,pantry,salle a manger,garde manger,comedor,"
     "despensa"},
    {{living},
     "living,living room,family room,great room,main room,big room,front room,sitting room,day room,"
     "common room,lounge,parlor,parlour,library,den,study,office,studio,sunroom,sun room,solarium,"
     "conservatory,garden room,sun porch,glazed porch,enclosed porch,recreation room,rec room,bonus room,"
     "game room,games room,salle de jeux,media room,music room,sewing room,craft room,hobby room,playroom,"
     "play room,salon,sejour,boudoir,bureau,piece principale,salle familiale,bibliotheque,sala,"
     "sala de estar,estancia,oficina,estudio,biblioteca"},
    {{bedroom},
     "bedroom,bed room,bunk room,bunkroom,guest room,nursery,dormitory,sleeping loft,sleeping porch,"
     "chambre,dortoir,dormitorio,recamara,habitacion,alcoba"},
    {{loft}, "loft,mezzanine,tapanco"},
    {{hall},
     "hall,hallway,corridor,passage,entry,entryway,entrance hall,foyer,vestibule,mudroom,mud room,"
     "couloir,hall d entree,entree,entrada,pasillo,recibidor,vestibulo"},
    {{stair}, "stair,stairway,stairwell,staircase,escalier,escalera"},
    {{closet}, "closet,wardrobe,walk in closet,placard,garde robe,penderie,armario,ropero"},
    {{laundry}, "laundry,laundry room,washer,washing machine,buanderie,laveuse,lavadero,lavanderia,lavadora"},
    {{bathroom},
     "bath,bathroom,half bath,washroom,restroom,rest room,ensuite,en suite,powder room,toilet,toilet "
     "room,lavatory,shower room,shower,bathtub,tub,water closet,basin,vanity,salle de bain,salle d "
     "eau,toilette,bain,bano,cuarto de bano,sanitario"},
    {{},
     "bird bath,loading dock,docking station,tape deck,deck oven,pool table,shop front,pressure washer,dish "
     "washer,power washer,"
     "fuel island,pump island,traffic island,island cabin,island house,island cottage"},
    {{utility},
     "utility,utility room,mechanical,mechanical room,furnace room,boiler room,plant room,"
     "salle mecanique,chaufferie,cuarto de maquinas"},
    {{sink}, "utility sink,sink,wet bar,evier,fregadero"},
    {{sink, laundry}, "laundry tub,laundry sink"},
    {{basement}, "basement,cellar,sous sol,cave,sotano,wine cellar"},
    {{unfinished_basement}, "root cellar,sotano sin terminar"}, // "unfinished" beside a basement is read apart
    {{crawl_space}, "crawl space,crawlspace,under house,vide sanitaire"},
    {{attic}, "attic,grenier,combles,entretoit,entre toit,atico,desvan"},
    {{garage}, "garage,vehicle bay,carriage house,garaje,cochera"},
    {{outbuilding},
     "shed,woodshed,toolshed,barn,stable,outbuilding,outhouse,pump house,pumphouse,well house,"
     "pool house,sauna hut,chicken coop,hen house,coop,kennel,greenhouse,remise,cabanon,hangar,"
     "grange,etable,serre,cobertizo,granero,establo,invernadero"},
    {{workshop}, "workshop,shop,atelier,taller"},
    {{boathouse}, "boathouse,boat house,boat bay,hangar a bateaux,abri a bateaux,casa de botes"},
    {{dock}, "dock,pier,boat slip,wharf,jetty,quai,muelle,embarcadero"},
    {{outdoor},
     "outdoor,outside,exterior,patio,deck,porch,veranda,verandah,balcony,awning,roof,lawn,boat "
     "ramp,terrace,yard,backyard,"
     "garden,driveway,carport,lanai,gazebo,pergola,exterieur,dehors,balcon,terrasse,cour,jardin,galerie,"
     "abri d auto,afuera,terraza,porche"},
    {{eaves}, "soffit,eave,eaves,soffite,alero"},
    {{house},
     "ground floor,main floor,first floor,second floor,upper floor,upstairs,downstairs,whole house,"
     "all rooms,rez de chaussee,etage,planta baja,planta alta"},
    {{hot_tub}, "hot tub,spa,spa tub,indoor pool,bain a remous"},
    {{hot_tub, outdoor}, "pool,swimming pool,piscine,piscina"},
    {{boat_hoist}, "boat hoist,boat lift,boat winch,leve bateau"},
};

constexpr std::string_view kBefore[] = {"near",   "by",     "beside", "behind",  "opposite", "over", "above",
                                        "next",   "toward", "facing", "outside", "from",     "pres", "dessus",
                                        "contre", "vers",   "devant", "junto",   "sobre",    "cerca"};
constexpr std::string_view kAfter[] = {"side"};
constexpr std::string_view kFeature[] = {"wall", "door", "window"};
constexpr std::string_view kFixtures[] = {"basin", "vanity", "shower", "bathtub", "tub", "washer", "washing machine"};
constexpr std::string_view kArticles[] = {"the", "to", "a",  "le", "la",  "les", "l",   "de", "du",
                                          "des", "d",  "au", "el", "del", "al",  "los", "las"};

std::span<std::string_view const> words(LandmarkWord kind) {
    switch (kind) {
    case LandmarkWord::before: return kBefore;
    case LandmarkWord::after: return kAfter;
    case LandmarkWord::feature: return kFeature;
    case LandmarkWord::fixture: return kFixtures;
    case LandmarkWord::article: break;
    }
    return kArticles;
}

std::vector<PlaceWords> sorted_phrases() {
    std::vector<PlaceWords> all;
    for (PlaceList const& list : kPlaceLists)
        for (auto rest = list.phrases; !rest.empty();) {
            auto const comma = std::min(rest.find(','), rest.size());
            all.push_back({rest.substr(0, comma), list.places});
            rest.remove_prefix(std::min(comma + 1, rest.size()));
        }
    std::ranges::sort(all, {}, &PlaceWords::words);
    return all;
}
} // namespace

std::span<PlaceWords const> place_words(char first) {
    static std::vector<PlaceWords> const by_letter = sorted_phrases();
    auto const letter = [](PlaceWords const& row) { return row.words.front(); };
    return {std::ranges::lower_bound(by_letter, first, {}, letter),
            std::ranges::upper_bound(by_letter, first, {}, letter)};
}

bool is_landmark_word(LandmarkWord kind, std::string_view word) {
    return std::ranges::find(words(kind), word) != words(kind).end();
}

} // namespace legwork
