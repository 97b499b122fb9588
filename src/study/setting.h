#pragma once
// A job made ready for calculation: every fact a figure (or the end of its range that this corner
// asks for), every leg with its factors. Prepared once a job and corner; the search then judges
// schemes against it without looking at the job again.

#include "cable/rating.h"
#include "site/job.h"
#include "study/corner.h"
#include "tables/catalogue.h"

#include <string>
#include <vector>

namespace toft::study {

/// One leg of the run.
template <class L>
struct LegSetting {
    site::LegMethod method = site::LegMethod::clipped;
    cable::Laying laying = cable::Laying::clipped;
    cable::LegFactors<L> factors;
    ValueIn<L, Celsius> surroundings{};
    ValueIn<L, Metres> length{};  ///< the longest it may be
    Metres depth_least;           ///< the shallowest it may lie; only in the ground
    const tables::DepthAdvice* advice = nullptr;
};

/// A metal part that enters or frames the outbuilding.
struct MetalPart {
    std::string name;
    std::string pointer;
    bool extraneous = false;  ///< liable to bring in a potential from outside
    bool bridges = false;     ///< joins the house's earth to the building's
};

template <class L>
struct SupplySetting {
    site::Earthing system = site::Earthing::tn_c_s;
    ValueIn<L, Volts> u0{};
    ValueIn<L, double> c_min{};
    ValueIn<L, double> c_max{};
    ValueIn<L, Ohms> ze_most{};  ///< external earth fault loop
    ValueIn<L, Ohms> ze_least{};
    ValueIn<L, Ohms> zn_most{};  ///< external line-neutral loop
    ValueIn<L, Ohms> zn_least{};
    ValueIn<L, Amperes> pscc{};  ///< largest fault current at the origin
    ValueIn<L, Ohms> ra_most{};  ///< the house's electrode (TT)
    ValueIn<L, Ohms> ra_least{};
};

template <class L>
struct HouseSetting {
    ValueIn<L, SquareMillimetres> neutral_most{};
    ValueIn<L, SquareMillimetres> earthing_most{};   ///< earthing conductor, the largest it may be
    ValueIn<L, SquareMillimetres> earthing_least{};  ///< … the smallest
    ValueIn<L, SquareMillimetres> bonding_least{};   ///< main bonding at the house
    double spare_ways = 0;
    Amperes max_device;
    Amperes behind_rcd;          ///< 0 for none
    Amperes service_fuse_least;  ///< rating of the operator's fuse, the smallest it may be
    bool assembly_backed =
        false;  ///< service fuse of a kind and size that backs up a domestic board
};

template <class L>
struct BuildingSetting {
    std::vector<MetalPart> parts;
    bool extraneous = false;           ///< any part is
    bool bridged = false;              ///< any part bridges
    ValueIn<L, Metres> reach_least{};  ///< distance to the nearest thing on the house's earth
    ValueIn<L, Ohms> ra_most{};        ///< own electrode
};

template <class L>
struct Setting {
    const site::Job* job = nullptr;
    const tables::Catalogue* catalogue = nullptr;
    const site::Run* run = nullptr;
    const site::Building* building_facts = nullptr;
    SupplySetting<L> supply;
    HouseSetting<L> house;
    BuildingSetting<L> building;
    std::vector<LegSetting<L>> legs;
    ValueIn<L, Metres> length_most{};
    ValueIn<L, Metres> length_least{};
    ValueIn<L, Amperes> ib{};  ///< design current of the run
    ValueIn<L, double> power_factor{};
    ValueIn<L, double> drop_limit{};   ///< per cent, for the run
    std::vector<OpenFact> open;        ///< facts that were read from a range
    std::vector<std::string> assumed;  ///< what was taken for granted, in sentences
};

/// Prepares run `run_index` of `job`. Job and catalogue must outlive the setting.
template <class L>
Setting<L> prepare(L& ledger, const tables::Catalogue& catalogue, const site::Job& job,
                   std::size_t run_index, const Corner& corner);

}  // namespace toft::study
