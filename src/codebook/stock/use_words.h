// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The words that propose a use: English, French and Spanish, lower case, without accents, as plain_words gives them.
// Tried from the top. Common usage, no source.
#pragma once

#include <string_view>

namespace legwork {

enum class Counts {
    as_thing,
    as_place,           // with a word for receptacles beside it, in the name; its own may stand in the room
    without_receptacle, // a room too, or a word of several senses: with a word for receptacles it is those
    in_a_kitchen,       // a counter is a kitchen's unless name or room tell another place
};
struct PhraseList {
    std::string_view use, phrases; // of `phrases` several, commas between them; a trailing * takes any ending
    Counts counts = Counts::as_thing;
};

namespace use_words {
using enum Counts;
inline constexpr PhraseList kPhraseLists[] = {
    {"power supply", "power supply,led driver"}, // of lights too
    {"lighting", "light,lighting,lamp,luminaire,eclairage,lumiere,iluminacion,luz,luces,luminaria"},
    {"generator inlet", "generator,inlet"},
    {"surge protector", "surge"},
    {"pool pump", "solar pool"},
    {"solar", "solar,micro inverter,microinverter,photovoltaic"},
    {"battery charger", "battery charg*,trickle charg*,golf cart,charger for battery,charger for batteries,charger "
                        "battery,cart charg*,boat "
                        "charg*,chargeur de batterie,cargador de bateria"},
    {"battery", "battery"},
    {"vehicle charger", "vehicle charg*,car charg*,ev charg*,evse,ev,electric vehicle,electric car,charger for "
                        "car,charger for vehicle,charger car,charger vehicle,charger ev"},
    {"pool pump", "pool pump,swimming pool pump,pump pool,pump for pool,pump for the pool,pool filter,pool motor,pool "
                  "equipment,pompe de piscine,pompe piscine,bomba de piscina"},
    {"pool heater", "pool heat*,heater pool,chauffe piscine"},
    {"hydromassage tub", "hydromassage,hydro massage,whirlpool,whirlpool bath,jetted tub,jetted bath,jet tub,tub "
                         "jet,tub motor,bathtub motor,tub pump,bain tourbillon,hidromasaje"},
    {"hot tub", "hot tub,spa tub,tub hot,spa heat*,spa pack,bain a remous"},
    {"hot tub", "spa", without_receptacle},
    {"door opener", "garage door open*,door open*,garage open*,garage door operat*,garage door motor,overhead "
                    "door,door operator,ouvre porte"},
    {"door opener", "porte de garage", without_receptacle},
    {"door opener", "abrepuerta"},
    {"door opener", "garage door,door of garage", without_receptacle},
    {"gate operator", "gate open*,gate operat*,gate motor"},
    {"gate operator", "driveway gate", without_receptacle},
    {"gate operator", "opener gate,operator gate,ouvre barriere,porton electrico"},
    {"door opener", "opener"},
    {"welder", "welder,welding"},
    {"tankless water heater", "tankless,instant water*"},
    {"heat pump water heater", "heat pump water*,heat pump hot water*,water heater heat pump,hot water heat "
                               "pump,hybrid water*,hybrid hot water*,water heater hybrid,chauffe eau thermodynamique"},
    {"water heater", "water heater,heater water,hot water tank,hot water,sink heater,chauffe eau,calentador de agua"},
    {"air handler",
     "air handl*,ahu,handler air,indoor unit,indoor head,unit indoor,head indoor,inside unit,mini split head,minisplit "
     "head,heat pump head,split head,wall head,head unit,fan coil,unite interieure,unidad interior"},
    {"heat pump", "heat pump,pump heat,thermopompe,bomba de calor,mini split,minisplit,outdoor unit"},
    {"backup heat", "backup heat*,back up heat*,heat strip"},
    {"air conditioner", "air condition*,conditioner air,climatiseur,aire acondicionado,ac unit,ac condenser,central "
                        "ac,window ac,condenser,condensing unit"},
    {"air conditioner", "ac,a c", without_receptacle},
    {"furnace", "furnace"},
    {"boiler", "boiler"},
    {"floor heating", "floor heat*,floor warm*,heated floor,radiant floor"},
    {"baseboard", "baseboard,plinthe"},
    {"electric fireplace",
     "electric fireplace,electric fire place,fireplace electric,fireplace heat*,fireplace insert electric,foyer "
     "electrique,chimenea electrica"},
    {"sauna", "sauna", without_receptacle},
    {"sauna", "sauna heat*"},
    {"kiln", "kiln,pottery oven,four a poterie,horno de ceramica"},
    {"well pump", "well pump,pump well,bomba de pozo,water pump,irrigation pump,booster pump,jet pump"},
    {"sump pump", "sump,pompe de puisard"},
    {"outdoor pump", "fountain pump,pump fountain"},
    {"outdoor pump", "fountain,waterfall", without_receptacle},
    {"outdoor pump", "pond pump,pump pond,sprinkler pump,lawn pump,garden pump"},
    {"outdoor pump", "septic", without_receptacle},
    {"outdoor pump", "septic pump,effluent pump,outdoor pump,pump outdoor,outside pump"},
    {"central vacuum", "central vacuum,vacuum central,built in vacuum,vacuum system,house vacuum"},
    {"attic fan",
     "attic fan,fan attic,attic exhaust*,attic vent*,whole house fan,ventilateur de grenier,ventilador de atico"},
    {"central vacuum", "aspirateur central,aspiradora central"},
    {"smoke alarms", "smoke,co alarm"},
    {"dishwasher", "dishwasher,dish washer,lave vaisselle,lavavajillas"},
    {"disposer", "disposer,disposal,garburator"},
    {"microwave", "microwave,micro wave"},
    {"microwave", "micro", without_receptacle},
    {"refrigerator", "refrigerator,fridge,refrigerateur,frigo,refrigerador,nevera"},
    {"freezer", "freezer,congelateur,congelador"},
    {"appliance", "range hood,hood range,pressure washer"},
    {"cooktop", "cooktop,hob"},
    {"range", "range,cookstove,cuisiniere"},
    {"oven", "oven,horno"},
    {"dryer", "dryer,secheuse,secadora"},
    {"laundry", "clothes washer,laveuse,lavadora,washer,washing machine,wash machine,wash mach,laundry,laundry room"},
    {"bath fan", "bath fan,bathroom fan,bath exhaust,bathroom exhaust"},
    {"network", "network,router,modem"},
    {"feeder", "subpanel,sub panel,feeder"},
    {"heating", "heater,heating,chauffage"},
    {"pump", "pump,ejector,pompe,bomba"},
    {"kitchen counter", "kitchen counter,kitchen island,kitchen ctr,breakfast bar"},
    {"kitchen counter", "counter,countertop,island,peninsula,comptoir,encimera", in_a_kitchen},
    {"bathroom", "bath,bathroom,washroom,restroom,ensuite,powder room,vanity,basin", as_place},
    {"outdoor", "outdoor,outside,exterior,patio,deck,dock,porch,balcony,terrace,yard,backyard,garden,driveway",
     as_place},
    {"garage", "garage", as_place},
    {"workshop", "workshop,shop,tool", as_place},
    {"receptacles", "gfci,gfi,receptacle,outlet,plug,socket,prise,tomacorriente,enchufe"},
};
} // namespace use_words

} // namespace legwork
