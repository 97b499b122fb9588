#include "study/setting.h"

#include "study/setting_parts.h"

namespace toft::study {

template <class L>
Setting<L> prepare(L& ledger, const tables::Catalogue& catalogue, const site::Job& job,
                   std::size_t run_index, const Corner& corner) {
    Setting<L> setting;
    setting.job = &job;
    setting.catalogue = &catalogue;
    setting.run = &job.runs[run_index];
    setting.building_facts = site::find_building(job, setting.run->to);
    Settler settler(catalogue, corner, setting.open);
    prepare_supply(ledger, settler, setting);
    prepare_house(ledger, settler, setting);
    prepare_building(ledger, settler, setting);
    prepare_legs(ledger, settler, setting, run_index);
    prepare_load(ledger, settler, setting);
    return setting;
}

template Setting<Silent> prepare(Silent&, const tables::Catalogue&, const site::Job&, std::size_t,
                                 const Corner&);
template Setting<Recording> prepare(Recording&, const tables::Catalogue&, const site::Job&,
                                    std::size_t, const Corner&);

}  // namespace toft::study
