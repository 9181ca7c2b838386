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
    // These words are the ones that the code itself prescribes.
    Sign{.id = "emergency-disconnect",
         .name = "emergency disconnect",
         .reason = SignFor::dwelling_service,
         .place = SignPlace::outdoor_disconnect,
         .text = {"Emergency disconnect, service disconnect", "Coupure d'urgence, interrupteur de branchement",
                  "Desconexión de emergencia, desconexión de la acometida"},
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
    Sign{.id = "generator-inlet",
         .name = "kind of generator",
         .reason = SignFor::inlet,
         .place = SignPlace::inlet,
         .text = {"Generator inlet, {amps}. Only for a generator whose neutral is (tick one): [ ] joined to its frame "
                  "[ ] not joined to its frame",
                  "Entrée de génératrice, {amps}. Seulement pour une génératrice dont le neutre est (cocher) : [ ] "
                  "relié à son bâti [ ] non relié à son bâti",
                  "Entrada de generador, {amps}. Solo para un generador cuyo neutro está (marcar): [ ] unido a su "
                  "armazón [ ] no unido a su armazón"}},
    Sign{.id = "single-120-volt",
         .name = "120 V source on both legs",
         .reason = SignFor::single_120_volt,
         .place = SignPlace::panel,
         .text =
             {"Warning. Both legs of this panel are fed by {source} with one and the same 120 V. Connect no circuits "
              "that "
              "share a neutral: it would burn. 240 V appliances do not work on it{off}",
              "Attention. Les deux barres de ce panneau sont alimentées par {source} avec le même 120 V. Ne raccorder "
              "aucun circuit à neutre commun : il brûlerait. Les appareils à 240 V ne fonctionnent pas{off}",
              "Atención. Las dos barras de este tablero son alimentadas por {source} con los mismos 120 V. No "
              "conectar circuitos de neutro compartido: se quemaría. Los aparatos de 240 V no funcionan{off}"},
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
         .text = {"Warning. {marks} is the breaker of a source. Do not move it to another space",
                  "Attention. {marks} est le disjoncteur d'une source. Ne pas le déplacer",
                  "Atención. {marks} es el interruptor de una fuente. No cambiarlo de lugar"}},
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
