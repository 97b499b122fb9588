#include "tree/follow.h"

#include <algorithm>

namespace toft::tree {

namespace {

using study::BuildingEarthing;
using study::RunScheme;

/// Runs through which a building behind them is bonded: it has metalwork that asks for it, and no
/// electrode of its own stands in between.
std::vector<bool> bonded_through(const Tree& tree, const std::vector<RunScheme>& schemes) {
    const std::vector<Place>& order = tree.order;
    std::vector<bool> through(order.size(), false);
    for (std::size_t i = order.size(); i-- > 0;) {
        const bool own = schemes[i].earthing == BuildingEarthing::own_electrode;
        const bool asks = tree.extraneous[i] || through[i];
        const std::size_t parent = order[i].parent;
        if (asks && !own && parent != from_house) through[parent] = true;
    }
    return through;
}

void add_head(Followed& all, const FollowedRun& run, std::size_t place) {
    const search::Evaluation& e = run.evaluation;
    if (e.governed_by && (!all.governed_by || e.headroom < all.headroom)) {
        all.headroom = e.headroom;
        all.governed_by = e.governed_by;
        all.governing_run = place;
    }
}

/// What is bought once counts once, however many runs ask for it.
void add_up(const Workplace& at, Followed& all) {
    for (FollowedRun& run : all.runs) {
        run.alone = run.judged.cost;
        for (const price::Item item : run.judged.once) {
            if (std::find(all.once.begin(), all.once.end(), item) != all.once.end()) continue;
            all.once.push_back(item);
            run.judged.price.remedies = run.judged.price.remedies + at.book.one(item);
        }
        price::add_up(run.judged.price, at.book);
        all.net += run.judged.price.net.number();
        all.total += run.judged.price.total.number();
        all.lost += run.judged.lost;
    }
    all.cost = all.total + (at.over_years ? all.lost : 0);
}

/// A board with fewer free ways than runs that start there.
bool ways_suffice(const Workplace& at, const std::vector<Place>& order,
                  const std::vector<FollowedRun>& runs) {
    std::vector<std::pair<std::string, double>> left;
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (runs[i].scheme.fed_from != site::FedFrom::spare_way) continue;
        const std::string& from = at.job.runs[order[i].run].from;
        const auto same = [&](const auto& entry) { return entry.first == from; };
        auto found = std::find_if(left.begin(), left.end(), same);
        if (found == left.end()) {
            const auto& stated = at.job.intake.board.spare_ways;
            const bool house = site::find_building(at.job, from)->origin;
            const double ways = house && stated.known ? stated.low : site::most_spare_ways;
            found = left.insert(left.end(), {from, ways});
        }
        // What feeds the cable that is there has its ways already.
        found->second -=
            std::max(0, runs[i].scheme.phases - site::ways_in_use(at.job.runs[order[i].run]));
        if (found->second < 0) return false;
    }
    return true;
}

}  // namespace

Tree tree_of(const Workplace& at) {
    Tree tree{outwards(at.job), {}};
    for (const Place& place : tree.order) {
        tree.extraneous.push_back(
            RunJudge(at, place.run, 0, nullptr).setting().building.extraneous);
    }
    return tree;
}

Followed follow(const Workplace& at, const Tree& tree, const std::vector<RunScheme>& schemes,
                const Floor& floor) {
    const std::vector<Place>& order = tree.order;
    Followed all;
    all.runs.resize(order.size());
    all.sound = true;
    all.dependability = order.empty() ? 0 : search::dependability(at.catalogue, schemes.front());
    const std::vector<bool> through = bonded_through(tree, schemes);
    std::vector<study::Incoming> left(order.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        FollowedRun& run = all.runs[i];
        run.scheme = schemes[i];
        run.behind = order[i].parent != from_house;
        if (run.behind) run.incoming = left[order[i].parent];
        RunJudge judge(at, order[i].run, schemes[i].phases, run.behind ? &run.incoming : nullptr);
        run.bonds_beyond = through[i];
        judge.bond_beyond(through[i]);
        run.judged = judge.judge(schemes[i], floor);
        run.evaluation = judge.evaluation();
        Silent silent;
        study::work_out(silent, judge.setting(), schemes[i], study::Stage::current,
                        run.evaluation.figures);
        left[i] = study::left_at_board(judge.setting(), schemes[i], run.evaluation.figures);
        all.sound = all.sound && run.judged.sound;
        all.dependability =
            std::min(all.dependability, search::dependability(at.catalogue, schemes[i]));
        add_head(all, run, i);
    }
    all.ways_free = ways_suffice(at, order, all.runs);
    all.sound = all.sound && all.ways_free;
    add_up(at, all);
    return all;
}

}  // namespace toft::tree
