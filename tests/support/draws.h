#pragma once
// Random jobs and schemes for property tests, drawn as plain numbers so that a test can change one
// of them and ask what follows.

#include "site/job.h"
#include "study/scheme.h"

#include <rapidcheck.h>

#include <iosfwd>
#include <vector>

namespace toft::support {

/// A drawn figure from `low` to `high`.
inline double drawn_between(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0;
}

/// One leg of a drawn run.
struct DrawnLeg {
    site::LegMethod method = site::LegMethod::clipped;
    double length_m = 10;       ///< 1 to 80
    double temperature_c = 20;  ///< 10 to 40, of the air
    double other_circuits = 0;  ///< 0 to 5
    double depth_m = 0.6;       ///< 0.5 to 1.2
    double height_m = 6;        ///< 3 to 7, of an overhead leg
    bool indoors = false;
    bool concealed = false;
    std::size_t stretch = 0;  ///< to which it belongs
};

/// One stretch of a drawn run.
struct DrawnStretch {
    tables::Family family = tables::Family::armoured_xlpe_copper;
    int cores = 2;
    std::size_t size = 3;  ///< place of the cable among those of its family and cores
    study::Protective protective = study::Protective::armour;
    std::size_t separate = 3;  ///< place of the separate conductor in the tables
    int parallel = 1;          ///< 1 or 2
};

/// A job and a scheme in numbers. It is the first stretch of its run.
struct Drawn : DrawnStretch {
    std::vector<DrawnStretch> further;  ///< each of another family or other cores than the last
    std::vector<DrawnLeg> legs;
    int phases = 1;
    double load_a = 20;       ///< 1 to 60
    double uneven = 0;        ///< share of the load on one line alone; three phases only
    double power_factor = 1;  ///< 0.5 to 1
    double ze_ohm = 0.2;      ///< 0.02 to 0.8
    double zn_ohm = 0.2;      ///< 0.02 to 0.8
    double soil_k_m_w = 1.5;  ///< 0.5 to 3
    double ground_c = 15;     ///< 10 to 30
    std::size_t device = 0;   ///< place of the device in the tables
    study::BuildingEarthing earthing = study::BuildingEarthing::supply_earth;
};

/// A number from `low` to `high` in ten thousand steps, wherever in a property it is drawn.
double number_between(double low, double high);

/// Cables of that family and that many cores, by section.
std::vector<const tables::Cable*> cables_of(tables::Family family, int cores);

/// The same for armoured XLPE copper.
std::vector<const tables::Cable*> cables_of(int cores);

/// How many sizes there are of the drawn cable.
std::size_t sizes_of(const DrawnStretch& drawn);

site::Job job_of(const Drawn& drawn);
study::RunScheme scheme_of(const Drawn& drawn);

/// Any drawn job and scheme of all families, one phase or three, one stretch or several; a core
/// serves only where the cable has one to spare.
rc::Gen<Drawn> any_drawn();

/// The same with armoured cable all the way.
rc::Gen<Drawn> any_armoured();

void showValue(const Drawn& drawn, std::ostream& out);

/// Any scheme that the shop offers for the job's run; the case is passed over where it offers none.
study::RunScheme any_scheme_of(const site::Job& job);

}  // namespace toft::support
