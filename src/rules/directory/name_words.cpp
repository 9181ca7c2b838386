// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/directory/name_words.h"

#include <algorithm>
#include <array>
#include <string>

namespace legwork {

namespace {
constexpr std::string_view kFillers =
    "the of for and or in on at to by with from near an misc miscellaneous various other general several some all main "
    "new old extra spare unused unknown test temp temporary circuit breaker no nr number num wire wiring cable "
    "electric "
    "electrical electricity stuff thing item branch volt amp afci led "
    "part future reserved reserve blank not used use vacant empty control unidentified abandoned finished unfinished "
    "ceiling overhead recessed wall standard regular dedicated double duplex single split switched quad etc tbd todo "
    "na "
    "none nothing here there same above see what ask "
    // French
    "le la les un une des du de et ou au aux en dans sur pour avec divers diverse autre general generale nouveau "
    "nouvelle "
    "ancien ancienne futur libre disjoncteur fil cable electrique electricite courant chose plafond mur mural murale "
    // Spanish
    "el los las una unos unas del con para por en vario varia otro otra nuevo nueva viejo vieja circuito interruptor "
    "futuro reserva reservado electrico electrica electricidad corriente cosa techo";

constexpr std::string_view kThings =
    "light lighting lamp luminaire fixture plug outlet receptacle recept recep rec socket switch heat heater heating "
    "baseboard radiator cooling fan pump motor machine tool panel subpanel feeder "
    "lumiere eclairage lampe luminaire plafonnier prise interrupteur chauffage plinthe radiateur ventilateur pompe "
    "moteur "
    "machine outil panneau "
    "luz luces alumbrado iluminacion lampara enchufe toma tomacorriente contacto calefaccion calefactor ventilador "
    "bomba "
    "motor maquina herramienta tablero appliance equipment device power load gfci gfi appareil aparato";

constexpr std::string_view kPlaces =
    "room master primary half guest crawl addition bonus bedroom bed bath bathroom washroom restroom toilet ensuite "
    "powder kitchen kitchenette dining living family "
    "sitting lounge den study office library loft attic basement cellar crawlspace hall hallway corridor stair stairs "
    "stairway stairwell landing entry entrance entryway foyer vestibule porch lanai veranda verandah deck patio "
    "balcony "
    "terrace "
    "yard backyard garden driveway dock pier wharf garage carport shed barn stable workshop shop studio store storage "
    "storeroom closet pantry mudroom utility mechanical bunk bunkroom nursery playroom gym sunroom solarium "
    "conservatory greenhouse boathouse cabin cottage house home building outbuilding suite unit apartment flat "
    "upstairs downstairs upper lower top bottom middle centre center inside outside indoor indoors outdoor outdoors "
    "exterior interior front back rear side left right north south east west northeast northwest southeast southwest "
    "floor level storey story ground first second third area space zone corner end wing "
    "chambre cuisine salon salle bain toilettes sejour manger bureau atelier garage cave soussol sous sol grenier "
    "entree "
    "couloir escalier rangement placard veranda balcon terrasse cour jardin quai remise grange etable hangar "
    "serre maison chalet cabane batiment logement etage rezdechaussee rez chaussee haut bas dedans dehors interieur "
    "exterieur avant arriere cote gauche droit droite nord est ouest premier deuxieme coin aile "
    "dormitorio recamara habitacion cuarto cocina bano sala comedor oficina taller garaje cochera sotano atico desvan "
    "pasillo escalera entrada lavadero despensa armario porche patio terraza jardin muelle cobertizo "
    "granero "
    "establo invernadero casa cabana edificio departamento piso planta arriba abajo dentro fuera delante atras lado "
    "izquierda izquierdo derecha derecho norte sur este oeste primero primer segundo esquina ala";

constexpr std::string_view kRoles =
    "men man women woman gentlemen gent lady ladies children child guest visitor owner tenant landlord master staff "
    "employee manager janitor caretaker custodian superintendent nurse doctor dr patient client customer public "
    "teacher "
    "student pastor priest minister bishop captain skipper crew driver operator chef cook baker butcher barber "
    "mechanic "
    "welder carpenter farmer gardener ranger keeper harbourmaster harbormaster musician artist dancer actor player "
    "referee "
    "coach team member volunteer firefighter police officer guard trainer groom bride vet veterinarian hairdresser "
    "tailor "
    "potter weaver blacksmith brewer printer painter photographer writer librarian clerk cashier server waiter "
    "bartender "
    "host director president principal secretary treasurer engineer electrician plumber contractor neighbour neighbor "
    "nanny maid butler family everybody everyone people person adult senior elder scout guide camper hiker skier "
    "fisherman "
    "fishermen angler hunter trapper worker workmen workman passenger resident lodger boarder inspector installer user "
    "mother pilot judge chief commander warden sexton verger brewmaster beekeeper "
    "dog cat horse animal chicken hen cow goat sheep pig bird fish rabbit bee "
    "today tomorrow winter summer spring autumn fall season day night year world devil dragon crow eagle "
    "ami amis invite maitre enfant parent personnel employe directeur directrice client commerce poste direction "
    "controle "
    "conference reunion juntas actos invitado huesped nino nina visita empleado gerente cliente king queen prince "
    "princess duke lockkeeper shopkeeper innkeeper housekeeper groundskeeper lighthousekeeper storekeeper gatekeeper "
    "headmaster stationmaster";

constexpr std::string_view kChildren = "kid boy girl teen teenager toddler baby";
constexpr std::string_view kRelatives =
    "mom mum mommy mummy dad daddy father grandma grandpa grandmother grandfather granny nana uncle aunt auntie wife "
    "husband son daughter brother sister cousin nephew niece roommate flatmate boyfriend girlfriend "
    "maman papa mamie papi mama hijo hija abuela abuelo tio tia esposo esposa";
constexpr std::string_view kMine = "my our mon ma mes notre nos mi mis nuestro nuestra";
constexpr std::string_view kOwned =
    "desk computer pc laptop tv television stereo bench workbench car truck van boat wardrobe nook aquarium hobby "
    "craft "
    "music gaming corner lair pad place side charger ordinateur voiture computadora coche";
constexpr std::string_view kShared =
    "washroom restroom toilet bathroom locker change changing dorm dormitory cabin shower gym camp club zone area pool "
    "play playground playroom scout guide school flat suite unit cottage wing";
constexpr std::string_view kLandmarks =
    "creek point lake hill landing bay harbour harbor ferry road street avenue lane bridge river pond mountain valley "
    "diner cafe pub tavern restaurant pizza bakery market inn motel hotel church chapel school farm ranch vineyard "
    "orchard "
    "mill quarry mine gulch cove beach park lady dame";
constexpr std::string_view kSaints = "st saint sainte ste san santa";
constexpr std::string_view kNotNames = "what that it there here who let how where he she";
constexpr std::string_view kRoomOf =
    "chambre bureau atelier coin cuarto dormitorio habitacion recamara oficina taller rincon";
constexpr std::string_view kOf = "de d a del";
constexpr std::string_view kKeepOn =
    "medical oxygen ventilator dialysis cpap alarm incubator aquarium alarme oxygene dialyse alarma medico oxigeno";

constexpr std::array<std::string_view, 2> kTellingPhrases{"heat pump", "a c"};

std::string_view words(WordList list) {
    switch (list) {
    case WordList::filler: return kFillers;
    case WordList::thing: return kThings;
    case WordList::place: return kPlaces;
    case WordList::role: return kRoles;
    case WordList::child: return kChildren;
    case WordList::relative: return kRelatives;
    case WordList::mine: return kMine;
    case WordList::owned: return kOwned;
    case WordList::shared: return kShared;
    case WordList::landmark: return kLandmarks;
    case WordList::saint: return kSaints;
    case WordList::not_a_name: return kNotNames;
    case WordList::room_of: return kRoomOf;
    case WordList::of: return kOf;
    case WordList::keep_on: break;
    }
    return kKeepOn;
}

bool stands_in(std::string_view list, std::string_view word) {
    if (word.empty()) return false;
    for (std::size_t at = list.find(word); at != std::string_view::npos; at = list.find(word, at + 1)) {
        bool const starts = at == 0 || list[at - 1] == ' ';
        bool const ends = at + word.size() == list.size() || list[at + word.size()] == ' ';
        if (starts && ends) return true;
    }
    return false;
}
} // namespace

bool is_in(WordList list, std::string_view word) {
    auto const all = words(list);
    if (stands_in(all, word)) return true;
    constexpr std::array<std::string_view, 3> plurals{"s", "es", "x"};
    return std::ranges::any_of(plurals, [&](std::string_view plural) {
        return word.size() > plural.size() + 2 && word.ends_with(plural) &&
               stands_in(all, word.substr(0, word.size() - plural.size()));
    });
}

bool has_telling_phrase(std::string_view words) {
    return std::ranges::any_of(kTellingPhrases, [&](auto phrase) { return stands_in(words, phrase); });
}

} // namespace legwork
