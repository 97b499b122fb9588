#include "support/trees.h"

#include "search/candidates.h"
#include "site/built.h"
#include "site/validate.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "tree/feeding.h"
#include "tree/follow.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <random>

namespace toft::support {

namespace {

template <class Row, class Kept>
void keep_rows(std::vector<Row>& rows, Kept kept) {
    rows.erase(std::remove_if(rows.begin(), rows.end(), [&](const Row& r) { return !kept(r); }),
               rows.end());
}

bool one_of(double value, std::initializer_list<double> few) {
    return std::find(few.begin(), few.end(), value) != few.end();
}

bool sold(const tables::Device& d) {
    if (d.standard == "BS 88-3") return one_of(d.rating.number(), {45, 100});
    return d.standard == "BS EN 60898" && d.curve == "B" && d.breaking.value == amperes(6000) &&
           one_of(d.rating.number(), {16, 32, 63});
}

tables::Catalogue load_tables() {
    auto loaded = tables::load_catalogue(tables::embedded_files());
    if (!loaded) std::abort();
    return std::move(*loaded);
}

/// Of prices beside all rows those beside the rows that are kept.
template <class Row, class Price, class Name>
void keep_beside(const std::vector<Row>& whole, const std::vector<Row>& kept,
                 std::vector<Price>& prices, const Name& name) {
    std::vector<Price> left;
    for (const Row& row : kept) {
        std::size_t i = 0;
        while (name(whole.at(i)) != name(row)) ++i;
        left.push_back(prices[i]);
    }
    prices = std::move(left);
}

void keep_prices(const tables::Catalogue& whole, const tables::Catalogue& kept,
                 price::Prices& prices) {
    keep_beside(whole.cables, kept.cables, prices.cables, price::cable_item);
    keep_beside(whole.separates, kept.separates, prices.separates, price::separate_item);
    keep_beside(whole.devices, kept.devices, prices.devices, price::device_item);
}

SmallShop stocked() {
    SmallShop shop{load_tables(), {}};
    keep_rows(shop.catalogue.cables, [](const tables::Cable& c) {
        return c.family == tables::Family::armoured_xlpe_copper &&
               one_of(c.section.number(), {6, 16});
    });
    keep_rows(shop.catalogue.separates,
              [](const tables::Conductor& c) { return one_of(c.section.number(), {16}); });
    keep_rows(shop.catalogue.devices, sold);
    keep_rows(shop.catalogue.run_rcds,
              [&](const tables::RunRcd& rcd) { return &rcd == &shop.catalogue.run_rcds.front(); });
    const tables::Catalogue whole = load_tables();
    auto book = price::read_book("demo", tables::embedded_text("price/demo.csv"), whole);
    if (!book) std::abort();
    shop.book = std::move(*book);
    for (price::Prices* prices : {static_cast<price::Prices*>(&shop.book), &shop.book.low,
                                  &shop.book.high, &shop.book.cost}) {
        keep_prices(whole, shop.catalogue, *prices);
    }
    return shop;
}

/// Draws that do not hang on a standard library's distributions.
struct TreeDice {
    std::mt19937 engine;
    std::size_t below(std::size_t count) { return engine() % count; }
    bool once_in(std::size_t count) { return below(count) == 0; }
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(below(1001)) / 1000;
    }
};

void furnish(TreeDice& dice, site::Building& b, int phases) {
    b.load = measured(amperes(dice.between(2, 14)));
    b.spare_ways = measured(static_cast<double>(dice.below(5)));
    if (dice.once_in(2)) b.spare_ways = {};
    if (dice.once_in(3)) {
        site::Metalwork pipe;
        pipe.comes_from = site::ComesFrom::ground;
        pipe.insulating_section = site::Answer::no;
        pipe.bonded_at_house = site::Answer::no;
        b.metalwork = {pipe};
    }
    if (dice.once_in(3)) {
        site::Circuit c;
        c.name = "sockets";
        c.kind = site::CircuitKind::fixed_load;
        c.load_w = measured(dice.between(300, 2000));
        c.power_factor = measured(1.0);
        c.length = measured(metres(dice.between(3, 25)));
        c.device = site::NamedDevice{"BS EN 60898", "B", amperes(16)};
        b.circuits = {c};
    }
    if (phases == 3) b.load = {}, b.load_w = measured(dice.between(1000, 6000));
    b.electrode.resistance = measured(ohms(dice.between(20, 150)));
}

std::vector<int> shape(TreeDice& dice) {
    static const std::vector<std::vector<int>> shapes{{the_house, 0},
                                                      {the_house, 0, 1},
                                                      {the_house, 0, 0},
                                                      {the_house, the_house, 0},
                                                      {the_house, the_house, 1},
                                                      {the_house, 0, the_house}};
    return shapes[dice.below(shapes.size())];
}

class Trial {
public:
    Trial(const tree::Workplace& at, const tree::Floor& floor,
          double below = std::numeric_limits<double>::infinity())
        : at_(at),
          floor_(floor),
          tree_(tree::tree_of(at)),
          metal_(std::find(tree_.extraneous.begin(), tree_.extraneous.end(), true) !=
                 tree_.extraneous.end()),
          chosen_(tree_.order.size()),
          left_(tree_.order.size()) {
        best_.total = below;
    }

    BruteWay cheapest() {
        rest_.assign(tree_.order.size() + 1, 0);
        for (std::size_t place = tree_.order.size(); place-- > 0;) {
            rest_[place] = rest_[place + 1] + least_alone(place);
        }
        go(0, 0);
        return std::move(best_);
    }

private:
    /// Of any scheme, sound or not, without its final circuits: no way of feeding it changes that.
    double least_alone(std::size_t place) {
        double least = std::numeric_limits<double>::infinity();
        for (const int phases : study::phase_choices(at_.job, tree_.order[place].run)) {
            const tree::RunJudge judge(at_, tree_.order[place].run, phases, nullptr);
            const search::Shop shop = search::shop_for(judge.setting());
            const auto heads = search::heads_of(shop, judge.setting());
            for (const search::Route& route : search::routes_of(shop, judge.setting())) {
                for (const search::Head& head : heads) {
                    const auto priced = judge.priced(search::scheme_of(route, head), {}, {});
                    least = std::min(least, priced.cost);
                }
            }
        }
        return least;
    }

    void go(std::size_t place, double so_far) {
        if (place == tree_.order.size()) {
            const auto way = tree::follow(at_, tree_, chosen_, floor_);
            if (way.sound && way.cost < best_.total) best_ = {way.cost, chosen_};
            return;
        }
        const tree::Place& here = tree_.order[place];
        const study::Incoming* in = here.parent == tree::from_house ? nullptr : &left_[here.parent];
        std::vector<Step> steps;
        for (const int phases : study::phase_choices(at_.job, here.run)) {
            if (in && phases > in->phases) continue;
            tree::RunJudge judge(at_, here.run, phases, in);
            search::Shop shop = search::shop_for(judge.setting());
            if (in) shop.feeds = {site::FedFrom::spare_way};
            const auto heads = search::heads_of(shop, judge.setting());
            for (const search::Route& route : search::routes_of(shop, judge.setting())) {
                for (const search::Head& head : heads) {
                    attempt(judge, search::scheme_of(route, head), steps);
                }
            }
        }
        std::stable_sort(steps.begin(), steps.end(),
                         [](const Step& a, const Step& b) { return a.price < b.price; });
        for (const Step& step : steps) {
            if (so_far + step.price + rest_[place + 1] >= best_.total) return;
            chosen_[place] = step.scheme;
            left_[place] = step.leaves;
            go(place + 1, so_far + step.price);
        }
    }

    struct Step {
        study::RunScheme scheme;
        double price;
        study::Incoming leaves;
    };

    /// With a building behind bonded through it or not: only the whole way tells.
    void attempt(tree::RunJudge& judge, const study::RunScheme& scheme, std::vector<Step>& steps) {
        double least = std::numeric_limits<double>::infinity();
        for (const bool bonds : {false, true}) {
            if (bonds && !metal_) continue;
            judge.bond_beyond(bonds);
            const auto judged = judge.judge(scheme, floor_);
            if (judged.sound) least = std::min(least, judged.cost);
        }
        if (least == std::numeric_limits<double>::infinity()) return;
        study::Figures<Silent> figures = judge.evaluation().figures;
        Silent silent;
        study::work_out(silent, judge.setting(), scheme, study::Stage::current, figures);
        steps.push_back({scheme, least, study::left_at_board(judge.setting(), scheme, figures)});
    }

    const tree::Workplace& at_;
    tree::Floor floor_;
    tree::Tree tree_;
    bool metal_;
    std::vector<study::RunScheme> chosen_;
    std::vector<study::Incoming> left_;
    std::vector<double> rest_;  ///< what places from there on cost at least
    BruteWay best_;
};

}  // namespace

const SmallShop& small_shop() {
    static const SmallShop shop = stocked();
    return shop;
}

site::Job tree_job(const std::vector<int>& fed_from) {
    site::Job job = plain_job();
    const site::Building shed = job.buildings[1];
    const site::Run run = job.runs[0];
    job.buildings.resize(1);
    job.runs.clear();
    for (std::size_t i = 0; i < fed_from.size(); ++i) {
        site::Building b = shed;
        b.id = fmt::format("b{}", i);
        b.load = measured(amperes(8));
        b.spare_ways = measured(6.0);
        job.buildings.push_back(b);
        site::Run r = run;
        r.id = fmt::format("r{}", i);
        r.from = fed_from[i] == the_house ? "house" : fmt::format("b{}", fed_from[i]);
        r.to = b.id;
        r.legs = {plain_leg(site::LegMethod::buried_direct, 20)};
        job.runs.push_back(r);
    }
    return job;
}

site::Job random_tree_job(unsigned seed) {
    TreeDice dice{std::mt19937(seed)};
    site::Job job = tree_job(shape(dice));
    site::Intake& in = job.intake;
    if (dice.once_in(4)) in.phases = 3;
    if (dice.once_in(4)) {
        in.earthing = site::Earthing::tt;
        in.electrode = measured(ohms(dice.between(10, 100)));
    } else if (dice.once_in(3)) {
        in.earthing = site::Earthing::tn_s;
    }
    in.ze = measured(ohms(dice.between(0.1, 0.6)));
    in.line_neutral_loop = measured(ohms(dice.between(0.05, 0.3)));
    in.board.spare_ways = measured(static_cast<double>(dice.below(4)));
    in.demand = measured(amperes(dice.between(10, 40)));
    for (std::size_t i = 0; i < job.runs.size(); ++i) {
        site::Run& run = job.runs[i];
        run.legs[0].length = measured(metres(dice.between(5, 70)));
        if (run.from == "house" && !dice.once_in(3)) run.fed_from = site::FedFrom::spare_way;
        const bool first = run.from == "house";
        const bool three = in.phases == 3 && first && dice.once_in(2);
        if (in.phases == 3) run.phases = three ? 3 : 1;
        furnish(dice, job.buildings[i + 1], three ? 3 : 1);
    }
    if (dice.once_in(3)) std::reverse(job.runs.begin(), job.runs.end());
    return job;
}

void add_possible_run(site::Job& job, int from, int to) {
    site::Run run = job.runs[0];
    run.id = fmt::format("r{}", job.runs.size());
    run.from = from == the_house ? "house" : fmt::format("b{}", from);
    run.to = fmt::format("b{}", to);
    for (const site::Run& other : job.runs) {
        if (other.to == run.to) run.phases = other.phases;
    }
    run.fed_from.reset();
    run.legs = {plain_leg(site::LegMethod::buried_direct, 20)};
    job.runs.push_back(run);
}

site::Job random_choice_job(unsigned seed) {
    site::Job job = random_tree_job(seed);
    TreeDice dice{std::mt19937(seed + 1000)};
    const std::size_t buildings = job.runs.size();
    for (std::size_t more = 1 + dice.below(3); more > 0; --more) {
        site::Job larger = job;
        const int to = static_cast<int>(dice.below(buildings));
        const int from = static_cast<int>(dice.below(buildings + 1)) - 1;
        add_possible_run(larger, from, to);
        larger.runs.back().legs[0].length = measured(metres(dice.between(5, 70)));
        if (site::validate(larger).empty()) job = larger;
    }
    for (site::Run& run : job.runs) {
        if (dice.once_in(2)) continue;
        run.legs[0].trench = "shared";
        run.legs[0].other_loaded_circuits = {};
    }
    return job;
}

site::Job random_open_tree_job(unsigned seed) {
    site::Job job = random_tree_job(seed);
    TreeDice dice{std::mt19937(seed + 1000)};
    for (std::size_t i = 0; i < job.runs.size(); ++i) {
        site::Leg& leg = job.runs[i].legs[0];
        if (dice.once_in(2)) leg.length = between(leg.length.high * 0.6, leg.length.high);
        for (site::Metalwork& part : job.buildings[i + 1].metalwork) {
            part.what = site::Metal::water_pipe;
            part.insulating_section = site::Answer::unknown;
            if (dice.once_in(2)) part.bonded_at_house = site::Answer::unknown;
        }
    }
    if (dice.once_in(3)) job.intake.main_bonding = {};
    if (dice.once_in(3)) job.intake.ze = between(job.intake.ze.low, job.intake.ze.low * 3);
    if (dice.once_in(3)) job.ground.resistivity = {};
    return job;
}

BruteWay brute_cheapest(const tree::Workplace& at, const tree::Floor& floor) {
    return Trial(at, floor).cheapest();
}

double brute_cheapest_of_trees(const tree::Workplace& at) {
    double least = std::numeric_limits<double>::infinity();
    for (const auto& runs : tree::all_trees(at.job, 1000)) {
        const site::Job job = site::as_built(at.job, runs);
        const tree::Workplace here{at.catalogue, at.book, job, at.corner, nullptr};
        least = std::min(least, Trial(here, {}, least).cheapest().total);
    }
    return least;
}

}  // namespace toft::support
