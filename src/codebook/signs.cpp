// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/signs.h"

#include <array>

namespace legwork {

namespace {
constexpr std::array kSigns{
    Sign{.id = "service-disconnect",
         .name = "service disconnect",
         .reason = SignFor::service,
         .place = SignPlace::main,
         .text = {"Service disconnect", "Interrupteur de branchement", "Desconexión de la acometida"},
         .of_the_panel = true},
    Sign{.id = "emergency-disconnect",
         .name = "emergency disconnect",
         .reason = SignFor::dwelling_service,
         .place = SignPlace::outdoor_disconnect,
         .text = {"EMERGENCY DISCONNECT, SERVICE DISCONNECT", "Coupure d'urgence, interrupteur de branchement",
                  "Desconexión de emergencia, desconexión de la acometida"},
         .of_the_panel = true},
    Sign{.id = "feeder-emergency-disconnect",
         .name = "emergency disconnect if people live there (white letters of 13 mm, 1/2 in, on red)",
         .reason = SignFor::fed_dwelling,
         .place = SignPlace::outdoor_disconnect,
         .text = {"EMERGENCY DISCONNECT", "Coupure d'urgence", "Desconexión de emergencia"},
         .of_the_panel = true},
    Sign{.id = "largest-main",
         .name = "largest main",
         .reason = SignFor::service,
         .place = SignPlace::main,
         .text = {"Largest main breaker or fuse here: {main}",
                  "Calibre maximal du disjoncteur ou fusible "
                  "principal : {main}",
                  "Interruptor o fusible principal de {main} como máximo"},
         .of_the_panel = true},
    Sign{.id = "fault-current",
         .name = "available fault current",
         .reason = SignFor::other_service,
         .place = SignPlace::panel,
         .text = {"Largest fault current available here: ________ A. Reckoned on: ____________",
                  "Courant de défaut maximal disponible ici : ________ A. Calculé le : ____________",
                  "Corriente de falla máxima disponible aquí: ________ A. Calculada el: ____________"},
         .of_the_panel = true},
    Sign{.id = "calculated-load",
         .name = "calculated load",
         .reason = SignFor::dwelling_service,
         .place = SignPlace::panel,
         .text = {"Calculated load of this dwelling: ________ A", "Charge calculée de ce logement : ________ A",
                  "Carga calculada de esta vivienda: ________ A"},
         .of_the_panel = true},
    Sign{.id = "fed-from",
         .name = "where its feeder comes from",
         .reason = SignFor::feeder,
         .place = SignPlace::panel,
         .text = {"Fed from panel {panel}, breaker {marks}", "Alimenté par le panneau {panel}, disjoncteur {marks}",
                  "Alimentado desde el tablero {panel}, interruptor {marks}"},
         .of_the_panel = true},
    Sign{.id = "outbuilding-disconnect",
         .name = "disconnect of the building",
         .reason = SignFor::outbuilding,
         .place = SignPlace::main,
         .text = {"Switches off all of: {building}", "Coupe tout : {building}", "Desconecta todo: {building}"},
         .of_the_panel = true},
    Sign{
        .id = "several-sources",
        .name = "more than one source",
        .reason = SignFor::several_sources,
        .place = SignPlace::main,
        .text = {"More than one source can feed this panel: {sources}. Before work make sure that every one of them is "
                 "off{off}",
                 "Plus d'une source peut alimenter ce panneau : {sources}. Avant tout travail, s'assurer que toutes "
                 "sont coupées{off}",
                 "Más de una fuente puede alimentar este tablero: {sources}. Antes de trabajar, comprobar que todas "
                 "están desconectadas{off}"},
        .advised = true},
    // One of these two warnings, in these words.
    Sign{.id = "generator-inlet",
         .name = "kind of generator",
         .reason = SignFor::inlet,
         .place = SignPlace::inlet,
         .text = {"WARNING: FOR CONNECTION OF A SEPARATELY DERIVED (BONDED NEUTRAL) SYSTEM ONLY",
                  "Avertissement : pour le raccordement d'une source séparée (neutre relié au bâti) seulement",
                  "Advertencia: solo para conectar un sistema derivado por separado (neutro unido al armazón)"},
         .first_for = "a generator whose neutral is joined to its frame",
         .other_for = "one whose neutral is not",
         .other = {"WARNING: FOR CONNECTION OF A NONSEPARATELY DERIVED (FLOATING NEUTRAL) SYSTEM ONLY",
                   "Avertissement : pour le raccordement d'une source non séparée (neutre flottant) seulement",
                   "Advertencia: solo para conectar un sistema no derivado por separado (neutro flotante)"}},
    Sign{.id = "single-120-volt",
         .name = "120 V source on both legs",
         .reason = SignFor::single_120_volt,
         .place = SignPlace::panel,
         .text =
             {"WARNING: SINGLE 120-VOLT SUPPLY. DO NOT CONNECT MULTIWIRE BRANCH CIRCUITS! Both legs of this panel are "
              "fed by {source} with one and the same 120 V: a shared neutral would burn, and 240 V appliances do "
              "not work on it{off}",
              "Avertissement : source unique de 120 V. Ne pas raccorder de dérivations multifilaires! Les deux "
              "barres de ce panneau sont alimentées par {source} avec le même 120 V : un neutre commun brûlerait, "
              "et les appareils à 240 V ne fonctionnent pas{off}",
              "Advertencia: fuente única de 120 V. ¡No conectar circuitos multifilares! Las dos barras de este "
              "tablero son alimentadas por {source} con los mismos 120 V: un neutro compartido se quemaría, y los "
              "aparatos de 240 V no funcionan{off}"},
         .advised = true},
    Sign{.id = "interactive-source",
         .name = "source beside the main",
         .reason = SignFor::interactive,
         .place = SignPlace::main,
         .text =
             {"This panel is also fed by: {sources}. The main alone does not switch that off; switch off {marks} too",
              "Ce panneau est aussi alimenté par : {sources}. L'interrupteur principal seul ne le coupe pas; couper "
              "aussi {marks}",
              "Este tablero también es alimentado por: {sources}. El interruptor principal solo no lo desconecta; "
              "desconectar también {marks}"}},
    Sign{.id = "far-source",
         .name = "source breaker that must not be moved",
         .reason = SignFor::far_source,
         .place = SignPlace::breaker,
         .text = {"WARNING: POWER SOURCE OUTPUT CONNECTION ({marks}). DO NOT RELOCATE THIS OVERCURRENT DEVICE",
                  "Avertissement : {marks} est le disjoncteur d'une source. Ne pas le déplacer",
                  "Advertencia: {marks} es el interruptor de una fuente. No cambiarlo de lugar"}},
    Sign{.id = "ground-fault-tub",
         .name = "ground-fault protection of a tub or pool",
         .reason = SignFor::ground_fault_tub,
         .place = SignPlace::tub_switch,
         .text = {"{marks} is protected by a ground fault circuit interrupter. Test it regularly",
                  "{marks} est protégé par un disjoncteur différentiel. Le vérifier régulièrement",
                  "{marks} está protegido por un interruptor de falla a tierra. Probarlo con regularidad"}},
    Sign{.id = "continuous-load",
         .name = "continuous load below what the breaker says",
         .reason = SignFor::lesser_wire,
         .place = SignPlace::breaker,
         .text = {"Caution. Continuous load on {marks}: at most {amps}",
                  "Mise en garde. Charge continue sur {marks} : {amps} au plus",
                  "Precaución. Carga continua en {marks}: {amps} como máximo"}},
};

constexpr SignText kUnnamed{"the supply", "l'alimentation", "la alimentación"};
constexpr SignText kOffFirst{". Before {source} is used, switch off {marks}",
                             ". Avant d'utiliser {source}, couper {marks}",
                             ". Antes de usar {source}, desconectar {marks}"};
} // namespace

std::string_view words(SignPlace place) {
    switch (place) {
    case SignPlace::main: return "beside the main";
    case SignPlace::breaker: return "beside the breaker";
    case SignPlace::inlet: return "beside the inlet";
    case SignPlace::outdoor_disconnect: return "on the disconnect outdoors";
    case SignPlace::tub_switch: return "beside the switch of";
    case SignPlace::panel: break;
    }
    return "on the panel's door";
}

std::span<Sign const> signs() { return kSigns; }
SignText const& unnamed_supply() { return kUnnamed; }
SignText const& off_first() { return kOffFirst; }

std::string_view in_language(SignText const& text, std::string_view language) {
    if (language == "fr") return text.fr;
    if (language == "es") return text.es;
    return text.en;
}

} // namespace legwork
