#include "study/setting.h"

#include "study/ground_memo.h"
#include "study/path_load.h"
#include "study/setting_parts.h"

#include <algorithm>

namespace toft::study {

std::vector<int> phase_choices(const site::Job& job, std::size_t run) {
    if (job.intake.phases == 1) return {1};
    if (job.runs.size() > 1) return {phases_in_tree(job, run)};
    if (job.runs[run].phases) return {*job.runs[run].phases};
    const site::Building& b = *site::find_building(job, job.runs[run].to);
    for (const site::Circuit& circuit : b.circuits) {
        if (circuit.phases == 3) return {3};
    }
    // A current stated without its phases is that of one line.
    if (b.load.known) return {1};
    return {1, 3};
}

site::Scenario wanted_scenario(const site::Job& job) {
    return job.wishes.scenario.value_or(site::Scenario::likely);
}

template <class L>
Setting<L> prepare(L& ledger, const tables::Catalogue& catalogue, const site::Job& job, RunAt at,
                   const Corner& corner) {
    const std::size_t run_index = at.run;
    Setting<L> setting;
    setting.bonds_beyond = at.bonds_beyond;
    setting.phases = at.phases > 0 ? at.phases : phase_choices(job, run_index).front();
    setting.job = &job;
    setting.catalogue = &catalogue;
    setting.run = &job.runs[run_index];
    setting.building_facts = site::find_building(job, setting.run->to);
    GroundMemo own;
    Settler settler(catalogue, corner, setting.open, at.memo ? *at.memo : own);
    prepare_supply(ledger, settler, setting, at.incoming);
    prepare_house(ledger, settler, setting, at.incoming);
    setting.circuits =
        circuit::prepare(ledger, catalogue, job, *setting.building_facts, setting.phases);
    prepare_load(ledger, setting, at.incoming);
    prepare_building(ledger, settler, setting);
    setting.existing.cable = cable_there(catalogue, *setting.run, setting.phases);
    prepare_legs(ledger, settler, setting, run_index);
    prepare_existing(ledger, settler, setting, run_index);
    return setting;
}

void lay_anew(Setting<Silent>& s, const site::Job& job, const Corner& corner) {
    const auto run = static_cast<std::size_t>(s.run - s.job->runs.data());
    s.job = &job;
    s.run = &job.runs[run];
    s.building_facts = site::find_building(job, s.run->to);
    s.legs.clear();
    s.stretches.clear();
    s.open.clear();
    s.assumed.clear();
    const auto of_a_leg = [](const UnsaidFact& fact) { return fact.what == Unsaid::depth; };
    s.unsaid.erase(std::remove_if(s.unsaid.begin(), s.unsaid.end(), of_a_leg), s.unsaid.end());
    Silent silent;
    GroundMemo unused;
    Settler settler(*s.catalogue, corner, s.open, unused);
    prepare_legs(silent, settler, s, run);
    prepare_existing(silent, settler, s, run);
}

template Setting<Silent> prepare(Silent&, const tables::Catalogue&, const site::Job&, RunAt,
                                 const Corner&);
template Setting<Recording> prepare(Recording&, const tables::Catalogue&, const site::Job&, RunAt,
                                    const Corner&);

}  // namespace toft::study
