#pragma once
// Random jobs and schemes for property tests, drawn as plain numbers so that a test can change one
// of them and ask what follows.

#include "site/job.h"
#include "study/scheme.h"

#include <rapidcheck.h>

#include <iosfwd>
#include <vector>

namespace toft::support {

/// One leg of a drawn run.
struct DrawnLeg {
    site::LegMethod method = site::LegMethod::clipped;
    double length_m = 10;       ///< 1 to 80
    double temperature_c = 20;  ///< 10 to 40, of the air
    double other_circuits = 0;  ///< 0 to 5
    double depth_m = 0.6;       ///< 0.5 to 1.2
};

/// A job and a scheme in numbers.
struct Drawn {
    std::vector<DrawnLeg> legs;
    double load_a = 20;       ///< 1 to 60
    double power_factor = 1;  ///< 0.5 to 1
    double ze_ohm = 0.2;      ///< 0.02 to 0.8
    double zn_ohm = 0.2;      ///< 0.02 to 0.8
    double soil_k_m_w = 1.5;  ///< 0.5 to 3
    double ground_c = 15;     ///< 10 to 30
    int cores = 2;            ///< 2 or 3
    std::size_t size = 3;     ///< place of the cable among those of its cores
    std::size_t device = 0;   ///< place of the device in the tables
    study::Protective protective = study::Protective::armour;
    std::size_t separate = 3;  ///< place of the separate conductor in the tables
    study::BuildingEarthing earthing = study::BuildingEarthing::supply_earth;
};

/// A number from `low` to `high` in ten thousand steps, wherever in a property it is drawn.
double number_between(double low, double high);

/// Cables of that many cores, by section.
std::vector<const tables::Cable*> cables_of(int cores);

site::Job job_of(const Drawn& drawn);
study::RunScheme scheme_of(const Drawn& drawn);

/// Any drawn job and scheme; a core serves only in a three-core cable.
rc::Gen<Drawn> any_drawn();

void showValue(const Drawn& drawn, std::ostream& out);

}  // namespace toft::support
