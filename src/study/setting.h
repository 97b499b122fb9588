#pragma once
// A job made ready for calculation: every fact a figure (or the end of its range that this corner
// asks for), every leg with its factors. Prepared once a job and corner; the search then judges
// schemes against it without looking at the job again.

#include "cable/rating.h"
#include "circuit/setting.h"
#include "demand/intake_left.h"
#include "site/job.h"
#include "study/corner.h"
#include "study/incoming.h"
#include "tables/catalogue.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace toft::study {

/// One leg of the run.
template <class L>
struct LegSetting {
    site::LegMethod method = site::LegMethod::clipped;
    cable::Laying laying = cable::Laying::clipped;
    std::size_t stretch = 0;  ///< to which it belongs
    /// By family; worked out for those that the stretch may be built with.
    std::array<cable::LegFactors<L>, tables::families> factors;
    std::array<cable::LegFactors<L>, tables::families> paired;  ///< with a second cable beside it
    bool indoors = true;     ///< out of sun and wet; asked only where it matters
    bool concealed = false;  ///< in a wall or partition, less than 50 mm deep
    Metres height_least;     ///< of an overhead leg
    ValueIn<L, Celsius> surroundings{};
    ValueIn<L, Metres> length{};  ///< the longest it may be
    Metres depth_least;           ///< the shallowest it may lie; only in the ground
    const tables::DepthAdvice* advice = nullptr;
    const tables::HeightAdvice* height_advice = nullptr;
};

/// Legs in a row that one cable covers.
template <class L>
struct StretchSetting {
    std::size_t first_leg = 0;
    std::size_t legs = 0;
    std::array<bool, tables::families> families{};  ///< it may be built with
    std::optional<int> cores;                       ///< where the survey names them
    std::optional<SquareMillimetres> live;          ///< where the survey names the section
    const tables::Cable* existing = nullptr;        ///< lies there
    ValueIn<L, Metres> length_most{};
    ValueIn<L, Metres> length_least{};
};

/// The cable that lies where the run is to go.
template <class L>
struct ExistingSetting {
    const tables::Cable* cable = nullptr;  ///< null: there is none, or not for so many phases
    bool damaged = false;
    bool sound = false;                ///< found so, or taken so at this corner
    ValueIn<L, Ohms> insulation{};     ///< the least it may read
    ValueIn<L, Ohms> loop{};           ///< R1+R2, the most it may read
    ValueIn<L, Ohms> loop_least{};     ///< … and the least
    ValueIn<L, Ohms> loop_expected{};  ///< what the shortest length gives at 20 °C
    bool live_read = false;            ///< R1+Rn was read
    ValueIn<L, Ohms> live{};           ///< the most it may read
    ValueIn<L, Ohms> live_expected{};
    ValueIn<L, Ohms> more_line{};  ///< of each live conductor over what its length gives
    ValueIn<L, Ohms> more_path{};  ///< of the protective path over that
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
    bool island = false;         ///< its earth is another building's own electrode
    ValueIn<L, Ohms> ze_most{};  ///< external earth fault loop
    ValueIn<L, Ohms> ze_hot{};   ///< … with runs before this one as hot as a fault leaves them
    ValueIn<L, Ohms> ze_least{};
    ValueIn<L, Ohms> zn_most{};     ///< external line-neutral loop, runs before this one hot
    ValueIn<L, Ohms> zn_working{};  ///< … at working temperature
    ValueIn<L, Ohms> zn_origin{};   ///< … of the supply alone
    ValueIn<L, Ohms> runs{};        ///< line and neutral of the runs before this one; or 0
    ValueIn<L, Ohms> zn_least{};
    ValueIn<L, Ohms> zl_most{};  ///< of one line alone, for faults between lines (three phases)
    ValueIn<L, Ohms> zl_least{};
    ValueIn<L, Amperes> pscc{};  ///< largest fault current that the run's device may meet
    ValueIn<L, Ohms> ra_most{};  ///< the house's electrode (TT)
    ValueIn<L, Ohms> ra_least{};
};

template <class L>
struct HouseSetting {
    const tables::Device* service_fuse = nullptr;  ///< null: not stated, or not in the tables
    ValueIn<L, SquareMillimetres> neutral_most{};
    ValueIn<L, SquareMillimetres> earthing_most{};   ///< earthing conductor, the largest it may be
    ValueIn<L, SquareMillimetres> earthing_least{};  ///< … the smallest
    ValueIn<L, SquareMillimetres> bonding_least{};   ///< main bonding at the house
    double spare_ways = 0;                           ///< of the poles that the run needs
    Amperes max_device_least;  ///< largest device the board takes, the least that may be
    bool at_house = true;      ///< false: the board is an outbuilding's, fed by another run
    Amperes behind_rcd;        ///< sensitivity of the RCD in front of its ways; 0 for none
    std::optional<HeadResidual> residual_before;  ///< at the head of a run before this one
    bool isolator = false;                        ///< in the tails, that the electrician may open
    bool breaking_known = false;  ///< what the house's board and its devices can break
    Amperes breaking_least;
    std::string takes;  ///< standard of the devices its ways take; empty: modern breakers
    Metres tails_most;  ///< length of the tails, the longest they may be
    bool tails_known = false;
    Amperes service_fuse_least;  ///< rating of the operator's fuse, the smallest it may be
    Amperes service_fuse_most;
    bool assembly_backed =
        false;  ///< service fuse of a kind and size that backs up a domestic board
    demand::HouseDemand<L> demand;   ///< largest, in each way the survey allows
    demand::IntakeLimits<L> limits;  ///< what fuse, tails and main switch carry
};

template <class L>
struct BuildingSetting {
    std::vector<MetalPart> parts;
    bool extraneous = false;           ///< any part is
    bool bridged = false;              ///< any part bridges
    ValueIn<L, Metres> reach_least{};  ///< distance to the nearest thing on the house's earth
    ValueIn<L, Ohms> ra_most{};        ///< own electrode, at the worst time of the year
    ValueIn<L, Amperes> returning{};   ///< that a lost neutral would send into the ground, at most
    bool gap_judged = false;           ///< the supply's earth may rise for long: a lost neutral
    ValueIn<L, Metres> gap_least{};    ///< from the own electrode to buried metal on that earth
    ValueIn<L, Metres> gap_needed{};   ///< for the ground there to stay below the touch voltage
    ValueIn<L, Volts> lift_most{};     ///< of the ground there, the supply's neutral lost
};

/// Current of one line together with that of the neutral, over the design current: in step with
/// the line's own and at right angles to it.
template <class L>
struct LineShare {
    bool loaded = false;
    ValueIn<L, double> along{};
    ValueIn<L, double> across{};
};

/// Facts that no range bounds or no choice stands for while nobody states them: whatever a rule
/// would say of the figure taken instead, it does not know.
enum class Unsaid : unsigned char { nothing, house_electrode, house_demand, depth };

struct UnsaidFact {
    Unsaid what = Unsaid::nothing;
    std::string pointer;
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
    int phases = 1;  ///< that the run takes to the building
    std::vector<LegSetting<L>> legs;
    std::vector<StretchSetting<L>> stretches;
    ExistingSetting<L> existing;
    ValueIn<L, Metres> length_most{};
    ValueIn<L, Metres> length_least{};
    ValueIn<L, Amperes> demand{};          ///< of the run's building and all fed through it, of the
                                           ///< most loaded line
    bool feeds_others = false;             ///< further buildings are fed through this one
    bool others_beside = false;            ///< further runs leave the house
    ValueIn<L, Amperes> beside{};          ///< demand of those
    bool bonds_beyond = false;             ///< a building behind is bonded through this run
    ValueIn<L, Amperes> ib{};              ///< design current of the run, of its most loaded line
    ValueIn<L, double> neutral_share{};    ///< current of the neutral over that of the line
    bool harmonics = false;                ///< third harmonics are stated of what the run feeds
    ValueIn<L, double> harmonic_factor{};  ///< by which they lower its rating, where they are
    std::array<LineShare<L>, 3> lines{};   ///< where the lines are not loaded alike
    ValueIn<L, double> power_factor{};
    ValueIn<L, double> drop_before{};  ///< per cent, lost before this run begins
    ValueIn<L, double> drop_limit{};   ///< per cent, for this run and those before it
    circuit::Circuits<L> circuits;     ///< final circuits of the building, as far as stated
    std::vector<OpenFact> open;        ///< facts that were read from a range
    std::vector<UnsaidFact> unsaid;    ///< of those, the ones that leave a rule not known
    std::vector<std::string> assumed;  ///< what was taken for granted, in sentences
};

struct GroundMemo;  // study/ground_memo.h

/// Which run of the job, and with how many phases.
struct RunAt {
    std::size_t run = 0;
    int phases = 0;                      ///< 1 or 3; 0: the first of phase_choices
    GroundMemo* memo = nullptr;          ///< shared by all settings of one job; null: none is kept
    const Incoming* incoming = nullptr;  ///< what runs before it leave; null: fed from the house
    bool bonds_beyond = false;           ///< a building behind its own is bonded through it

    RunAt(std::size_t index) : run(index) {}
    RunAt(std::size_t index, int taken, GroundMemo* kept = nullptr)
        : run(index), phases(taken), memo(kept) {}
};

/// Whether a fact of that kind was left unsaid.
template <class L>
bool lacks(const Setting<L>& setting, Unsaid what) {
    for (const UnsaidFact& fact : setting.unsaid) {
        if (fact.what == what) return true;
    }
    return false;
}

/// Adds the pointers of what was left unsaid to those that a scheme hangs on, each once: a rule
/// that reads one is not known, whatever is built. Page: docs/methods/open-facts.md.
template <class L>
void add_unsaid(const Setting<L>& setting, std::vector<std::string>& facts) {
    for (const UnsaidFact& fact : setting.unsaid) {
        bool known = false;
        for (const std::string& pointer : facts) known = known || pointer == fact.pointer;
        if (!known) facts.push_back(fact.pointer);
    }
}

/// The load the run is sized for.
site::Scenario wanted_scenario(const site::Job& job);

/// The phases that run may take: what it states, else what its loads need, else all the supply has.
std::vector<int> phase_choices(const site::Job& job, std::size_t run);

/// Lays the run anew as `job` has it, which differs from the setting's in the lengths of its legs
/// alone and must outlive it too: what comes of them is as if prepared for `job`. Of open facts and
/// of what was taken for granted only those of the legs are left.
void lay_anew(Setting<Silent>& setting, const site::Job& job, const Corner& corner);

/// Prepares a run of `job`. Job and catalogue must outlive the setting.
template <class L>
Setting<L> prepare(L& ledger, const tables::Catalogue& catalogue, const site::Job& job, RunAt at,
                   const Corner& corner);

}  // namespace toft::study
