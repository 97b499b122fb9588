// What toft-first.wasm leaves to the whole module: jobs of several runs, and currents in soil of
// which readings tell more than one figure. Defined here in place of the rooms themselves, which
// are not linked to it.

#include "request/elsewhere.h"
#include "answer/design_parts.h"
#include "field/field.h"
#include "field/season.h"
#include "soil/driven_rod.h"
#include "soil/fall_of_potential.h"
#include "soil/soil_fit.h"

namespace {

[[noreturn]] void elsewhere() { throw toft::request::Elsewhere{}; }

}  // namespace

namespace toft::answer {

Answer design_tree(const Question&) { elsewhere(); }

}  // namespace toft::answer

namespace toft::field {

Outcome<Field> solve_field(const Strata&, const std::vector<Wire>&, const Cutting&) { elsewhere(); }
Outcome<Field> solve_field(const Medium&, const std::vector<Wire>&, const Cutting&) { elsewhere(); }
Ohms Field::joined() const { elsewhere(); }
Outcome<Strata> with_crust(const Strata&, const Crust&) { elsewhere(); }
Outcome<Medium> medium_of(const Strata&) { elsewhere(); }

}  // namespace toft::field

namespace toft::soil {

Outcome<SoilFit> fit_soil(const std::vector<SpacingReading>&, const FitOptions&) { elsewhere(); }
Outcome<RodCheck> held_against(const std::vector<field::Strata>&, const DrivenRod&,
                               const RodSolver&) {
    elsewhere();
}
Outcome<RodUpdate> narrowed(const Range<OhmMetres>&, const DrivenRod&) { elsewhere(); }
Outcome<FallResult> electrode_resistance(const FallTest&) { elsewhere(); }

}  // namespace toft::soil
