#include "site/validate.h"

#include "base/nearest.h"
#include "site/trenches.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace toft::site {

namespace {

std::vector<std::string> ids_of(const Job& job) {
    std::vector<std::string> ids;
    for (const Building& building : job.buildings) ids.push_back(building.id);
    return ids;
}

class Checker {
public:
    Checker(const Job& job, const std::vector<CircuitKind>& need_no_load)
        : job_(job), need_no_load_(need_no_load) {}

    Faults check() {
        buildings();
        runs();
        if (faults_.empty()) tree();
        if (one_origin_) loads();
        return std::move(faults_);
    }

private:
    void fault(const char* code, std::string pointer, std::string says, std::string nearest = "",
               std::vector<std::string> allowed = {}) {
        faults_.push_back(
            {code, std::move(pointer), std::move(says), std::move(nearest), std::move(allowed)});
    }

    void buildings() {
        std::set<std::string> seen;
        int origins = 0;
        for (std::size_t i = 0; i < job_.buildings.size(); ++i) {
            const Building& b = job_.buildings[i];
            origins += b.origin;
            if (!seen.insert(b.id).second) {
                fault("duplicate-id", fmt::format("/buildings/{}/id", i),
                      fmt::format("two buildings are called {}; give each its own id", b.id));
            }
        }
        one_origin_ = origins == 1;
        if (!one_origin_) {
            fault("origin", "/buildings",
                  fmt::format("{} buildings are at the origin; exactly one must carry "
                              "\"at\": \"origin\"",
                              origins));
        }
    }

    void known_building(const std::string& id, const std::string& pointer) {
        if (find_building(job_, id)) return;
        const auto ids = ids_of(job_);
        fault("unknown-building", pointer, fmt::format("there is no building {}", id),
              nearest_word(id, ids), ids);
    }

    void runs() {
        std::set<std::string> seen;
        if (job_.runs.empty()) fault("no-run", "/runs", "there is no run to plan; add one");
        for (std::size_t i = 0; i < job_.runs.size(); ++i) {
            const Run& run = job_.runs[i];
            const std::string at = fmt::format("/runs/{}", i);
            if (!seen.insert(run.id).second) {
                fault("duplicate-id", at + "/id", fmt::format("two runs are called {}", run.id));
            }
            known_building(run.from, at + "/from");
            known_building(run.to, at + "/to");
            if (run.from == run.to) fault("cycle", at + "/to", "a run cannot feed its own start");
            if (run.legs.empty()) fault("no-leg", at + "/legs", "a run needs at least one leg");
            feed(run, at);
            phases(run, at);
            changes(run, at);
            existing(run, at);
        }
        for (Fault& trench : faults_in_trenches(job_)) faults_.push_back(std::move(trench));
    }

    /// It lies the whole way, and what feeds it stands where its building has something.
    void existing(const Run& run, const std::string& at) {
        if (!run.existing) return;
        for (std::size_t i = 1; i < run.legs.size(); ++i) {
            const Leg& a = run.legs[i - 1];
            const Leg& b = run.legs[i];
            if (a.family == b.family && a.cores == b.cores && a.live == b.live) continue;
            fault("existing-part", at + "/existing",
                  "a cable that is there is judged only where it lies the whole way: leave it out, "
                  "or let the legs name no other");
            break;
        }
        const Building* from = find_building(job_, run.from);
        const auto& fed = run.existing->fed_from;
        if (!from || from->origin || !fed || *fed == FedFrom::spare_way) return;
        fault(
            "fed-from", at + "/existing/fed_from",
            fmt::format("{} is not the house: a run from there takes a way of its board", run.from),
            "", {"spare way"});
    }

    /// In an outbuilding there are no tails, and its board is the one that is planned.
    void feed(const Run& run, const std::string& at) {
        const Building* from = find_building(job_, run.from);
        if (!from || from->origin || !run.fed_from || *run.fed_from == FedFrom::spare_way) return;
        fault(
            "fed-from", at + "/fed_from",
            fmt::format("{} is not the house: a run from there takes a way of its board", run.from),
            "", {"spare way"});
    }

    /// A run takes no more phases than the supply has, and a cable needs cores enough for them.
    void phases(const Run& run, const std::string& at) {
        if (run.phases.value_or(1) > job_.intake.phases) {
            fault("phases", at + "/phases", "the supply has one phase: the run cannot take three",
                  "", {"1"});
        }
        const bool one = run.phases.value_or(job_.intake.phases) == 1;
        for (std::size_t i = 0; i < run.legs.size(); ++i) {
            const int cores = run.legs[i].cores.value_or(one ? 2 : 4);
            const std::string where = fmt::format("{}/legs/{}/cores", at, i);
            if (run.phases == 3 && cores < 4) {
                fault("phases", where,
                      fmt::format("three lines and the neutral need four cores; this cable has {}",
                                  cores),
                      "", {"4", "5"});
            } else if (one && cores > 3) {
                fault("phases", where,
                      fmt::format("one line, neutral and a protective core are three; this cable "
                                  "has {}",
                                  cores),
                      "", {"2", "3"});
            }
        }
        const Building* b = find_building(job_, run.to);
        if (!b) return;
        for (std::size_t i = 0; i < b->circuits.size(); ++i) {
            if (b->circuits[i].phases <= run.phases.value_or(job_.intake.phases)) continue;
            fault("phases",
                  fmt::format("/buildings/{}/circuits/{}/phases", building_index(job_, b->id), i),
                  fmt::format("circuit {} needs three phases; the run brings one",
                              b->circuits[i].name));
        }
    }

    void changes(const Run& run, const std::string& at) {
        std::size_t stretches = 1;
        for (std::size_t i = 1; i < run.legs.size(); ++i) {
            const Leg& a = run.legs[i - 1];
            const Leg& b = run.legs[i];
            stretches += a.family != b.family || a.cores != b.cores || a.live != b.live;
        }
        if (stretches <= most_changes + 1) return;
        fault("too-many-changes", at + "/legs",
              fmt::format("the cable changes {} times; at most {} changes are planned",
                          stretches - 1, most_changes));
    }

    /// Every building can be fed, and every run can be part of some tree.
    void tree() {
        const std::set<std::string> fed = fed_from_house("");
        for (std::size_t i = 0; i < job_.runs.size(); ++i) {
            const Run& run = job_.runs[i];
            const std::string at = fmt::format("/runs/{}", i);
            if (find_building(job_, run.to)->origin) {
                fault("cycle", at + "/to", "the building with the intake cannot be fed by a run");
            }
            if (fed.count(run.from) == 0) {
                fault("orphan", at + "/from",
                      fmt::format("run {} does not lead back to the origin", run.id));
            } else if (run.from != run.to && fed_from_house(run.to).count(run.from) == 0) {
                fault("cycle", at + "/from",
                      fmt::format("every way from the house to {} leads through {}: run {} can "
                                  "never be built; leave it out",
                                  run.from, run.to, run.id));
            }
        }
        for (std::size_t i = 0; i < job_.buildings.size(); ++i) {
            const Building& b = job_.buildings[i];
            if (!b.origin && fed.count(b.id) == 0 && !run_to(b.id)) {
                fault("orphan", fmt::format("/buildings/{}", i),
                      fmt::format("no run feeds {}; add one or leave the building out", b.id));
            }
        }
    }

    bool run_to(const std::string& id) const {
        return std::any_of(job_.runs.begin(), job_.runs.end(),
                           [&](const Run& run) { return run.to == id; });
    }

    /// Ids of the house and of all that can be fed without leading through `without`.
    std::set<std::string> fed_from_house(const std::string& without) const {
        std::set<std::string> fed;
        for (const Building& b : job_.buildings) {
            if (b.origin) fed.insert(b.id);
        }
        for (bool more = true; more;) {
            more = false;
            for (const Run& run : job_.runs) {
                if (fed.count(run.from) == 0 || run.to == without) continue;
                more = fed.insert(run.to).second || more;
            }
        }
        return fed;
    }

    void loads() {
        for (std::size_t i = 0; i < job_.buildings.size(); ++i) {
            const Building& b = job_.buildings[i];
            if (b.origin || b.load.known || b.load_w.known) continue;
            const std::string at = fmt::format("/buildings/{}", i);
            if (b.circuits.empty()) {
                fault(
                    "no-load", at,
                    fmt::format("say what {} will use: load_a in amperes, load_w in watts, or its "
                                "circuits",
                                b.id),
                    "", {"load_a", "load_w", "circuits"});
            }
            for (std::size_t c = 0; c < b.circuits.size(); ++c) {
                if (b.circuits[c].load_w.known || b.circuits[c].device) continue;
                if (needs_no_load(b.circuits[c].kind)) continue;
                fault("no-load", fmt::format("{}/circuits/{}", at, c),
                      fmt::format("circuit {} needs load_w or a device, or state load_a or load_w "
                                  "for the whole building",
                                  b.circuits[c].name),
                      "", {"load_w", "device"});
            }
        }
    }

    bool needs_no_load(CircuitKind kind) const {
        return std::find(need_no_load_.begin(), need_no_load_.end(), kind) != need_no_load_.end();
    }

    const Job& job_;
    const std::vector<CircuitKind>& need_no_load_;
    bool one_origin_ = false;
    Faults faults_;
};

}  // namespace

Faults validate(const Job& job, const std::vector<CircuitKind>& need_no_load) {
    return Checker(job, need_no_load).check();
}

}  // namespace toft::site
