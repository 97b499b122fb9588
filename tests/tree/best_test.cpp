// The cheapest whole against the plain loop over every scheme of every run.

#include "tree/best.h"

#include "study/ground_memo.h"
#include "support/trees.h"

#include <gtest/gtest.h>
#include <chrono>
#include <cstdio>
#include <cstdlib>

namespace toft::tree {
namespace {

TEST(Explore, Seeds) {
    const auto& shop = support::small_shop();
    const int from = std::getenv("FROM") ? std::atoi(std::getenv("FROM")) : 0;
    const int to = std::getenv("TO") ? std::atoi(std::getenv("TO")) : 10;
    const double head = std::getenv("HEADROOM") ? std::atof(std::getenv("HEADROOM")) : 0;
    for (int seed = from; seed < to; ++seed) {
        const site::Job job = support::random_tree_job(static_cast<unsigned>(seed));
        study::GroundMemo memo;
        const Workplace at{shop.catalogue, shop.book, job, {}, &memo};
        const Tree tree = tree_of(at);
        Asked asked;
        asked.floor.headroom = head;
        auto t0 = std::chrono::steady_clock::now();
        const Best best = cheapest(at, tree, asked);
        Asked quickly = asked;
        quickly.thorough = false;
        const bool deep = !cheapest(at, tree, quickly).proved;
        auto t1 = std::chrono::steady_clock::now();
        const auto way = support::brute_cheapest(at, asked.floor);
        const double brute = way.total;
        auto t2 = std::chrono::steady_clock::now();
        const double mine = best.found ? best.found->total : no_limit;
        std::printf("%d runs=%zu mine=%.4f brute=%.4f proved=%d deep=%d cand=%ld rounds=%ld %.0f ms / %.0f ms %s\n", seed,
                    job.runs.size(), mine, brute, best.proved, deep, best.considered, best.rounds,
                    std::chrono::duration<double, std::milli>(t1 - t0).count(),
                    std::chrono::duration<double, std::milli>(t2 - t1).count(),
                    (mine == brute || std::abs(mine - brute) < 1e-6) ? "" : "DIFFER");
        if (std::getenv("SHOW") && best.found) {
            for (std::size_t i = 0; i < tree.order.size(); ++i) {
                std::printf("  %s from %s\n    mine  %.4f %s\n    brute %s\n", job.runs[tree.order[i].run].id.c_str(), job.runs[tree.order[i].run].from.c_str(),
                    best.found->runs[i].alone, study::scheme_key(best.found->runs[i].scheme).c_str(),
                    way.schemes.empty() ? "" : study::scheme_key(way.schemes[i]).c_str());
            }
            if (!way.schemes.empty()) { const auto f = follow(at, tree, way.schemes, {}); for (auto& r : f.runs) { std::printf("  brute alone %.4f own %d bonds %d\n", r.alone, r.scheme.earthing == study::BuildingEarthing::own_electrode, r.bonds_beyond); } }
            for (auto e : tree.extraneous) std::printf(" extraneous %d", int(e));
            std::printf("\n");
        }
        std::fflush(stdout);
    }
}

}  // namespace
}  // namespace toft::tree
