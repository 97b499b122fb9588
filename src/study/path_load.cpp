#include "study/path_load.h"

#include "base/order.h"

#include <algorithm>

namespace toft::study {

namespace {

template <class L>
class PathWork {
public:
    PathWork(L& ledger, const Setting<L>& setting, std::vector<int>* lines = nullptr)
        : ledger_(ledger), s_(setting), scenario_(wanted_scenario(*setting.job)), lines_(lines) {}

    /// `of`: tells its lines of working from those of other buildings; empty for the run's own.
    PathLoad<L> behind(std::size_t run, int phases, const char* of) {
        const site::Building& b = *site::find_building(*s_.job, s_.job->runs[run].to);
        const demand::Place<L> place{&s_.catalogue->demand, s_.supply.u0, phases, of};
        PathLoad<L> out{demand::building_demand(ledger_, place, b, scenario_),
                        demand::sent_out(ledger_, place, b, scenario_), false};
        const std::vector<Fed> fed = fed_from(b.id);
        if (!fed.empty()) add(fed, Board{phases, b.id.c_str()}, out);
        return out;
    }

    /// The lines of the house's board, without what the house itself draws.
    ValueIn<L, Amperes> of_house(const site::Building& house) {
        PathLoad<L> none;
        none.load.lines.each.fill(ledger_.stated({"I.none", "nothing yet"}, amperes(0), "none"));
        none.load.later = none.load.lines.each[0];
        none.load.neutral = none.load.lines.each[0];
        none.sent = none.load.lines.each[0];
        add(fed_from(house.id), Board{s_.job->intake.phases, house.id.c_str()}, none);
        return none.load.total;
    }

private:
    struct Fed {
        const site::Run* run;
        int phases;
        PathLoad<L> carries;
    };
    struct Board {
        int phases;
        const char* id;
    };

    /// Runs from that building with what they carry, the largest first.
    std::vector<Fed> fed_from(const std::string& id) {
        std::vector<Fed> fed;
        for (std::size_t i = 0; i < s_.job->runs.size(); ++i) {
            const site::Run& run = s_.job->runs[i];
            if (run.from != id) continue;
            const int phases = phases_in_tree(*s_.job, i);
            fed.push_back({&run, phases, behind(i, phases, run.to.c_str())});
        }
        put_in_order(fed, [](const Fed& a, const Fed& b) {
            return plain(b.carries.load.total) < plain(a.carries.load.total);
        });
        return fed;
    }

    void add(const std::vector<Fed>& fed, const Board& board, PathLoad<L>& out) {
        demand::BuildingDemand<L>& load = out.load;
        const auto count = static_cast<std::size_t>(board.phases);
        const bool harmonics = third_declared();
        for (std::size_t k = 0; k < count; ++k) {
            load.lines.each[k] = load.lines.each[k] + load.later;
        }
        for (const Fed& one : fed) {
            const auto& more = one.carries.load;
            if (board.phases == 3 && one.phases == 3) {
                for (std::size_t k = 0; k < count; ++k) {
                    load.lines.each[k] = load.lines.each[k] + (more.lines.each[k] + more.later);
                }
            } else {
                const std::size_t least = demand::least_loaded(load.lines, board.phases);
                load.lines.each[least] = load.lines.each[least] + more.total;
                if (lines_ && board.phases == 3) note_line(*one.run, least);
            }
            load.neutral = load.neutral + more.neutral;
            if (one.phases == board.phases) add_harmonics(more, load);
            out.sent = out.sent + one.carries.sent;
        }
        finish(board, harmonics, out);
    }

    void note_line(const site::Run& run, std::size_t line) {
        (*lines_)[static_cast<std::size_t>(&run - s_.job->runs.data())] =
            static_cast<int>(line) + 1;
    }

    static void add_harmonics(const demand::BuildingDemand<L>& more,
                              demand::BuildingDemand<L>& load) {
        if (!more.harmonics) return;
        load.third = load.harmonics ? load.third + more.third : more.third;
        load.harmonics = true;
    }

    void finish(const Board& board, bool harmonics, PathLoad<L>& out) {
        demand::BuildingDemand<L>& load = out.load;
        const auto count = static_cast<std::size_t>(board.phases);
        for (std::size_t k = 0; k < count; ++k) {
            const int number = board.phases == 1 ? 0 : static_cast<int>(k) + 1;
            load.lines.each[k] =
                ledger_.let({"I.through", "current of a line with what is fed through", number, "",
                             "", board.id},
                            load.lines.each[k] * 1.0);
        }
        load.later = ledger_.stated({"I.later.in", "allowance for later", 0, "", "", board.id},
                                    amperes(0), "counted in the lines");
        load.heaviest = load.lines.each[demand::most_loaded(load.lines, board.phases)];
        if (board.phases == 1) {
            load.neutral = load.heaviest;
        } else if (!harmonics) {
            demand::Lines<L> none;
            none.each.fill(load.later);
            load.neutral = demand::neutral_current(ledger_, load.lines, none, board.id);
        }
        load.total = ledger_.let(
            {"I.path", "most loaded line with what is fed through", 0, "", "", board.id},
            load.heaviest * 1.0);
        out.fed_through = true;
    }

    /// Somewhere in the job: then the neutrals of all are added up, which is never too little.
    bool third_declared() const {
        for (const site::Building& b : s_.job->buildings) {
            for (const site::Circuit& circuit : b.circuits) {
                if (circuit.third_harmonic.known) return true;
            }
        }
        return false;
    }

    L& ledger_;
    const Setting<L>& s_;
    site::Scenario scenario_;
    std::vector<int>* lines_;  ///< where they are to be noted
};

bool needs_three(const site::Job& job, const site::Building& building) {
    return std::any_of(building.circuits.begin(), building.circuits.end(),
                       [](const site::Circuit& circuit) { return circuit.phases == 3; }) ||
           std::any_of(job.runs.begin(), job.runs.end(), [&](const site::Run& run) {
               return run.from == building.id && run.phases == 3;
           });
}

}  // namespace

template <class L>
PathLoad<L> path_load(L& ledger, const Setting<L>& s) {
    const auto run = static_cast<std::size_t>(s.run - s.job->runs.data());
    return PathWork<L>(ledger, s).behind(run, s.phases, "");
}

template <class L>
ValueIn<L, Amperes> load_of_all_runs(L& ledger, const Setting<L>& s) {
    return PathWork<L>(ledger, s).of_house(*site::find_building(*s.job, s.run->from));
}

std::vector<int> lines_of_runs(const Setting<Silent>& s) {
    const site::Job& job = *s.job;
    std::vector<int> lines(job.runs.size(), 0);
    if (job.intake.phases != 3) return lines;
    Silent silent;
    for (const site::Building& b : job.buildings) {
        if (b.origin) PathWork<Silent>(silent, s, &lines).of_house(b);
    }
    // Behind a run of one phase there is but its line.
    for (std::size_t pass = 0; pass < job.runs.size(); ++pass) {
        for (std::size_t i = 0; i < job.runs.size(); ++i) {
            for (std::size_t k = 0; k < job.runs.size(); ++k) {
                const bool feeds = job.runs[k].to == job.runs[i].from;
                if (feeds && lines[i] == 0 && lines[k] != 0) lines[i] = lines[k];
            }
        }
    }
    return lines;
}

int phases_in_tree(const site::Job& job, std::size_t run) {
    if (job.intake.phases == 1) return 1;
    if (job.runs[run].phases) return *job.runs[run].phases;
    const site::Building& end = *site::find_building(job, job.runs[run].to);
    if (needs_three(job, end)) return 3;
    const auto behind = fed_through(job, end);
    const bool three = std::any_of(behind.begin(), behind.end(),
                                   [&](const site::Building* b) { return needs_three(job, *b); });
    return three ? 3 : 1;
}

template PathLoad<Silent> path_load(Silent&, const Setting<Silent>&);
template PathLoad<Recording> path_load(Recording&, const Setting<Recording>&);
template Amperes load_of_all_runs(Silent&, const Setting<Silent>&);
template Traced<Amperes> load_of_all_runs(Recording&, const Setting<Recording>&);

}  // namespace toft::study
