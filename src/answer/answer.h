#pragma once
// What every face of the program shows: the same document is printed, sent and drawn. Figures are
// in the unit their name ends with.

#include "answer/guarding.h"
#include "finding/rule.h"
#include "price/bill.h"
#include "search/search.h"
#include "special/advice.h"
#include "walk/walk.h"

#include <functional>
#include <limits>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace toft::answer {

struct PriceAnswer {
    double house_end = 0, run = 0, ground = 0, far_end = 0, test_and_paper = 0, put_right_first = 0;
    double net = 0, vat = 0, total = 0;
    /// Of the same scheme with every price of the book at its low end, and at its high.
    double net_low = 0, net_high = 0, total_low = 0, total_high = 0;
    std::string currency = "GBP";
    std::string basis;
};

/// What the runs lose as heat, and the whole cost over the years that the price book counts.
struct YearsAnswer {
    double years = 0;
    double lost_kwh_year = 0;
    double lost = 0;     ///< worth of that energy today, pounds
    double total = 0;    ///< price with tax and lost energy together
    bool least = false;  ///< no sound scheme has a lower total
};

struct CoreAnswer {
    std::string colour;
    std::string sleeve;  ///< empty for none
    std::string use;     ///< line, neutral, protective
};

struct DeviceAnswer {
    std::string standard;
    std::string curve;  ///< empty for a fuse
    std::string kind;   ///< fuse, rewirable fuse, breaker, RCBO, moulded-case breaker
    double rating_a = 0;
    double breaking_capacity_ka = 0;
};

struct RcdAnswer {
    double sensitivity_ma = 0;
    std::string type;
    bool delayed = false;
    std::vector<std::string> covers;
    std::string instead = {};  ///< what would do in place of the type, and when; empty for nothing
};

struct FactorsAnswer {
    double ca = 1, cg = 1, ci = 1, cs = 1, cd = 1, cc = 1;
};

/// Smallest and largest fault current, amperes.
struct FaultRange {
    double smallest = 0;
    double largest = 0;
};

/// Volts that people meet while an earth fault is cleared, and for how long.
struct TouchAnswer {
    std::string against;  ///< the house's earth, or the ground
    double outbuilding_v = 0;
    double house_v = 0;                                  ///< against true ground
    std::optional<double> lasts_s;                       ///< none: nothing clears it
    std::optional<double> longest_dry_s, longest_wet_s;  ///< none: the curve sets no time
    bool past_curve = false;  ///< more volts than the curve for dry conditions knows
};

struct FigureAnswers {
    double length_m = 0;
    double design_current_a = 0;
    double rating_a = 0;
    int governing_leg = 1;
    std::vector<FactorsAnswer> factors;
    double voltage_drop_percent = 0;
    double voltage_drop_total_percent = 0;
    double loop_impedance_far_ohm = 0;
    double loop_impedance_limit_ohm = 0;
    double loop_impedance_test_limit_ohm = 0;
    double fault_current_near_ka = 0;
    double fault_current_far_ka = 0;
    double earth_fault_current_far_a = 0;
    FaultRange near_line_neutral_a, near_line_earth_a, far_line_neutral_a, far_line_earth_a;
    /// Three phases only.
    std::optional<FaultRange> near_line_line_a, far_line_line_a;
    std::optional<double> near_three_lines_a, far_three_lines_a;
    double neutral_share = 1;  ///< current of the neutral over that of the most loaded line
    std::optional<double> disconnection_s;  ///< none: the overcurrent device need not operate
    double r1_plus_r2_20c_ohm = 0;
    TouchAnswer touch;
    std::vector<std::pair<std::string, double>> longest_m;  ///< rule, metres
};

/// One cable between two terminations.
struct CableAnswer {
    std::string family;
    std::string standard;  ///< that the cable is made to
    int cores = 2;
    double live_mm2 = 0;
    std::optional<double> cpc_mm2;  ///< of the core that protects
    std::vector<CoreAnswer> core_list;
    std::string protective_conductor;
    bool armoured = true;
    bool armour_near = true;  ///< earthed at the near end
    bool armour_far = false;
    std::optional<double> separate_mm2;
    int parallel = 1;  ///< equal cables side by side
    std::string laid;  ///< what becomes of the cable that lies there; empty where none does
    double overall_mm = 0;
};

/// A part of the run in one cable.
struct StretchAnswer : CableAnswer {
    int first_leg = 1, last_leg = 1;
    double length_m = 0;
};

/// A run; the cable it names itself is that of its longest stretch.
struct RunAnswer : CableAnswer {
    std::string id;
    int phases = 1;
    int line = 0;  ///< that it is reckoned to take, 1 to 3; 0 where all, the only one, or any
    std::vector<StretchAnswer> stretches;  ///< from the near end; one unless the cable changes
    std::optional<double> bond_equivalent_mm2;
    std::string fed_from;
    std::string feeder;  ///< name of the outbuilding whose board feeds it; empty for the house
    DeviceAnswer device;
    bool device_stays = false;     ///< it feeds the cable there today
    std::optional<RcdAnswer> rcd;  ///< at the head: a device of its own, or the RCBO's
    FigureAnswers figures;
};

struct BondAnswer {
    std::string part;
    double required_mm2 = 0;
    double size_mm2 = 0;
};

struct ElectrodeAnswer {
    int rods = 1;
    double length_m = 0;
    double largest_ohm = 0;  ///< the largest it may be: measured, or predicted from the soil
    bool measured = false;
};

/// One matter a circuit is judged by: value against limit.
struct CircuitMatter {
    double value = 0, limit = 0, use = 0;
};

/// A final circuit as it is to be wired. A matter that does not arise is absent.
struct CircuitAnswer {
    int number = 0;  ///< of the job's list, from 1
    std::string name, kind;
    int phases = 1;
    std::string family;
    double live_mm2 = 0, cpc_mm2 = 0, length_m = 0;  ///< length of cable: of a ring all round
    DeviceAnswer device;
    double rcd_ma = 0;     ///< residual current protection of its own
    std::string rcd_type;  ///< A, F, B
    double design_current_a = 0, rating_a = 0;
    double drop_own_percent = 0;  ///< of the circuit alone
    double r1_plus_r2_20c_ohm = 0;
    std::optional<CircuitMatter> drop_percent, loop_ohm, heat, dip_percent, start_a, rise_percent;
    /// Largest a cold reading of that loop may be; none where only the residual current device
    /// clears.
    std::optional<double> loop_test_limit_ohm;
    bool residual_clears = false;  ///< only the residual current device clears an earth fault
};

struct BuildingAnswer {
    std::string id;
    std::string name;
    std::string earthing;
    std::vector<BondAnswer> bonding;
    std::optional<ElectrodeAnswer> electrode;
    std::string main_switch;
    std::vector<RcdAnswer> rcds;
    std::vector<CircuitAnswer> circuits;  ///< those that could be designed
};

struct FindingAnswer {
    std::string rule, clause, subject, unit, says;
    std::optional<double> value, limit, use;
    bool at_least = false;
    rules::Verdict verdict = rules::Verdict::meets;
    bool about_circuits = false;     ///< of circuits of the building
    std::vector<std::string> basis;  ///< of the figures behind it, each word once
};

/// Two devices in series: which of them clears a fault beyond both.
struct SelectivityAnswer {
    std::string upstream;  ///< in words; only its place where no more is known
    std::string downstream;
    std::string protects;  ///< what goes dark when the upstream one opens too
    std::string verdict;   ///< selective, partly, not selective, not known
    double to_a = 0;       ///< selective up to here but for the gap; 0 where nowhere
    double prospective_a = 0;
    std::optional<double> gap_from_a, gap_to_a;  ///< overloads of which nothing is promised
    std::string says;
};

struct TellAnswer {
    std::string who, when, why;
};

/// A trench that several runs lie in.
struct TrenchAnswer {
    std::string name;
    std::string dug_for;              ///< id of the run that pays for digging
    std::vector<std::string> beside;  ///< ids of those that lie in it too
    std::string says;
};

struct SchemeAnswer {
    int rank = 0;
    std::string key;
    std::string sentence;  ///< the scheme in words: what to do
    std::string words;     ///< the same on one short line
    std::vector<std::string> conditional_on;
    PriceAnswer price;
    YearsAnswer over_years;
    double headroom = 0;
    std::string governed_by;
    int dependability = 0;
    BuildingAnswer building;
    RunAnswer run;
    std::vector<FindingAnswer> findings;
    std::vector<SelectivityAnswer> selectivity;  ///< from the operator's fuse outwards
    std::vector<std::string> house_work;
    std::vector<TellAnswer> tell;
    std::vector<std::string> needs_a_person;
    std::vector<std::string> cautions;
    GuardAnswer guard;
    std::string run_sentence, run_words;  ///< of its own run alone, where there are several
    double run_total = 0;  ///< price of its own run, with tax; of one run the whole price
    /// The other runs of the same way to build a tree, each with its own figures and price, in
    /// order from the house outwards; this scheme's own run leaves the house first.
    std::vector<SchemeAnswer> further;
    std::optional<study::Incoming> incoming;  ///< what the runs before leave; none: from the house
    bool bonds_beyond = false;
    std::string feeds;  ///< "garage from the house, gym from garage"; empty where nothing is chosen
    std::vector<std::string> not_built;  ///< ids of runs that this way leaves out
    std::vector<TrenchAnswer> trenches;  ///< shared by runs of this way
    study::RunScheme scheme;  ///< for whoever wants to work on it further; not part of the document
    price::Bill bill;         ///< of its own run, line by line; not part of the document
    /// What runs before it buy once for the whole place; not part of the document.
    std::vector<price::Item> bought_before;
};

struct DroppedAnswer {
    std::string rule;
    std::string title;  ///< why, or what the rule asks
    long count = 0;
    std::string nearest_key;  ///< empty for none
    std::string nearest_says;
    double nearest_use = 0;
};

/// Part of a fact's range with one answer throughout.
struct PieceAnswer {
    double low = 0, high = 0;
    bool sound = false;
    std::string key, words;                ///< of what comes first there; empty where nothing does
    double total_low = 0, total_high = 0;  ///< its price with the fact at either end, with tax
};

/// An open fact, what hangs on it and how it is found out.
struct UnknownAnswer {
    std::string fact, says, unit;
    std::string place = {};  ///< of several runs: where it stands, in words; empty for the whole
    double low = 0, high = 0;
    bool stated = false;                    ///< the survey gave the range
    std::string effect;                     ///< decides, changes the price only, does not matter
    std::string hangs = {};                 ///< what the answer is over its range, in words
    std::vector<PieceAnswer> pieces = {};   ///< by rising value; none where it does not matter
    bool stepped = false;                   ///< pieces end on the values that there are
    bool together = false;                  ///< only once other facts are known to be well
    std::vector<std::string> with = {};     ///< facts each of which is enough for that
    std::optional<double> saves = {};       ///< pounds with tax that knowing it alone may save
    std::optional<double> saves_with = {};  ///< … once all others are known to be well
    std::optional<double> saves_alike = {};  ///< … once the same is known to be well at every place
    std::optional<double> worth = {};  ///< what it saves less its trouble at the price of an hour
    bool ask = false;                  ///< worth going to find out
    std::string why = {};              ///< it is asked, or not
    std::string question = {}, how = {}, by = {};
    double minutes = 0;
};

/// Currents of a building in one scenario.
struct LoadAnswer {
    std::string scenario;  ///< today, likely, everything
    std::vector<double> lines_a;
    double neutral_a = 0;
    double total_a = 0;  ///< of the most loaded line, with the allowance for later
};

struct BuildingDemandAnswer {
    std::string id;
    std::string name;
    std::string premises;               ///< column of the published allowances
    std::vector<LoadAnswer> scenarios;  ///< empty where nothing is stated of its load
};

/// A part of the intake and what it carries.
struct LimitAnswer {
    std::string part;
    double carries_a = 0;
    bool known = true;  ///< false: the smallest it may be
};

/// The house's demand as one way gives it, and what each part of the intake then has left: below 0
/// where it is short.
struct HouseDemandAnswer {
    std::string way;  ///< measured, declared, estimated
    double demand_a = 0;
    std::vector<double> left_a;  ///< by limit
};

struct NoticeAnswer {
    std::string when;  ///< before, after
    std::string why;
};

/// What is fed out there, and what the house can give.
struct DemandAnswer {
    std::string scenario;  ///< that the run is sized for
    double run_a = 0;      ///< demand of the building that the run feeds
    std::vector<BuildingDemandAnswer> buildings;
    std::vector<LimitAnswer> limits;
    std::vector<HouseDemandAnswer> house;  ///< the way to go by first; empty where none is known
    std::string notice;                    ///< ask first, tell after, nothing to ask or tell
    std::vector<NoticeAnswer> notices;
};

struct SearchAnswer {
    long candidates = 0, evaluated = 0, set_aside = 0, sound = 0, conditional = 0;
    double milliseconds = 0;
    /// Of a tree of runs.
    bool proved = true;    ///< the first scheme is the cheapest there is
    bool stopped = false;  ///< by who asked: the best found until then, which may not be the best
    double at_least = 0;   ///< pounds with tax: no sound way costs less
    long rounds = 0;       ///< ways to build the tree that were followed through
    long trees = 0;        ///< ways of feeding that were worked out, where there are several
};

/// Another run to a building than the one chosen, all else chosen anew around it.
struct OtherFeedAnswer {
    std::string run;
    std::string from;  ///< id of the building it starts at
    /// What the whole then costs more, pounds with tax; none where nothing sound is known.
    std::optional<double> more;
    bool proved = true;  ///< no way with it costs less; where there is none, none is sound
    int rank = 0;        ///< of the scheme that shows it; 0 where none does
};

/// A building with more than one run to it.
struct FeedAnswer {
    std::string building;
    std::string run;
    std::string from;
    std::vector<OtherFeedAnswer> others;
    std::string says;
};

struct SourceAnswer {
    std::string key, title, basis;
};

struct Answer {
    std::string job;
    std::string edition;
    std::string data_version;
    bool sound = false;
    std::vector<SchemeAnswer> schemes;
    std::vector<DroppedAnswer> dropped;
    std::vector<UnknownAnswer> unknowns;
    std::vector<std::string> assumed;
    std::vector<FeedAnswer> feeds;  ///< which run was chosen where there are several, and why
    DemandAnswer demand;
    std::vector<walk::Walk> walks;        ///< how each outbuilding should be earthed, and why
    std::vector<special::Advice> advice;  ///< special things of the building; judges no scheme
    SearchAnswer search;
    std::vector<SourceAnswer> sources;
    std::vector<std::string> cautions;  ///< that belong to every job
};

/// How far a design of several runs has come.
struct Progress {
    long rounds = 0;  ///< ways to build them all that were judged by every rule
    double price = std::numeric_limits<double>::infinity();  ///< of the best so far, with tax
    double at_least = 0;                                     ///< no sound way costs less
    bool others = false;  ///< the cheapest is found; ways with more of other virtues are looked for
};

/// What an answer is worked out from.
struct Question {
    const tables::Catalogue& catalogue;
    const price::Book& book;
    const site::Job& job;
    bool all = false;
    double (*milliseconds)() = nullptr;         ///< a clock, if there is one
    study::GroundMemo* memo = nullptr;          ///< kept between questions of one job
    std::size_t run = 0;                        ///< of the job, for what is asked of one run
    const study::Incoming* incoming = nullptr;  ///< left by the runs before; null: from the house
    bool bonds_beyond = false;                  ///< a building behind is bonded through the run
    std::size_t most = 0;                       ///< schemes to list; 0 for as many as is usual
    /// Asked now and then; once it says no, the best so far is the answer.
    std::function<bool(const Progress&)> go_on = {};
    /// How many jobs or readings of several runs are solved, after each; says whether to go on.
    std::function<bool(long)> told = {};
    /// What runs before buy once for the whole place: the run asked about does not pay for it
    /// again.
    std::vector<price::Item> bought_before = {};
    bool in_short = false;  ///< without walks, advice, open facts, sources
};

/// The run that is asked about, with so many phases.
study::RunAt run_at(const Question& question, int phases);

/// Designs the (valid) job.
Answer design(const Question& question);

/// The job with only the runs that the scheme builds: what is asked of one of its runs is asked of
/// that job.
site::Job as_built(const site::Job& job, const SchemeAnswer& scheme);

/// The part of a scheme that is about the run of that id; null where the scheme does not build it.
const SchemeAnswer* part_of(const SchemeAnswer& scheme, const std::string& run);

/// The answer for one run of a tree: its schemes are that run's part of each. Empty schemes where
/// there is no run of that id.
Answer for_run(const Answer& answer, const std::string& run);

/// The job with that run first, for whoever looks at one run.
site::Job seen_from(const site::Job& job, const std::string& run);

/// True when some scheme is sound once open facts turn out well but none is as things stand.
bool only_conditional(const Answer& answer);

}  // namespace toft::answer
