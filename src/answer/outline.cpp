#include "answer/outline.h"

#include "answer/circuits.h"
#include "answer/describe.h"
#include "study/path_load.h"

#include <algorithm>

namespace toft::answer {

namespace {

const StretchAnswer& longest(const std::vector<StretchAnswer>& stretches) {
    return *std::max_element(
        stretches.begin(), stretches.end(),
        [](const StretchAnswer& a, const StretchAnswer& b) { return a.length_m < b.length_m; });
}

}  // namespace

RunAnswer outline_of(const study::Setting<Silent>& setting, const study::RunScheme& scheme) {
    RunAnswer r;
    r.id = setting.run->id;
    r.phases = scheme.phases;
    const site::Job& job = *setting.job;
    if (job.runs.size() > 1 && r.phases == 1) {
        const auto place = static_cast<std::size_t>(setting.run - job.runs.data());
        r.line = study::lines_of_runs(setting)[place];
    }
    r.stretches = stretches_of(setting, scheme);
    static_cast<CableAnswer&>(r) = longest(r.stretches);
    r.fed_from = site::word(scheme.fed_from);
    if (!setting.house.at_house) {
        const site::Building& from = *site::find_building(*setting.job, setting.run->from);
        r.feeder = from.name.empty() ? from.id : from.name;
    }
    r.device = {scheme.device->standard, scheme.device->curve, kind_of_device(scheme.device->kind),
                scheme.device->rating.number(), scheme.device->breaking.value.number() / 1000};
    r.device_stays = scheme.head_stays;
    if (const auto residual = study::residual_at_head(scheme)) {
        r.rcd = RcdAnswer{
            residual->sensitivity.number() * 1000, "", residual->delayed, {"the run"}, ""};
    }
    return r;
}

std::string brief_words(const study::Setting<Silent>& setting, const study::RunScheme& scheme) {
    SchemeAnswer s;
    s.building.earthing = study::earthing_word(scheme.earthing);
    s.run = outline_of(setting, scheme);
    return short_words(s);
}

}  // namespace toft::answer
