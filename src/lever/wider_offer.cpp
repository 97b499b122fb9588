#include "base/text.h"
#include "lever/ideas.h"

#include <algorithm>

namespace toft::lever {

namespace {

void head(const Ground& ground, Changes& all) {
    const site::Run& run = ground.feed();
    if (run.fed_from) {
        Change change{"any-feed", site::word(*run.fed_from), ground.job};
        change.job.runs[ground.run].fed_from.reset();
        all.push_back(std::move(change));
    }
    if (run.device) {
        Change change{
            "any-device",
            run.device->standard + " " + significant(run.device->rating.number(), 4) + " A",
            ground.job};
        change.job.runs[ground.run].device.reset();
        all.push_back(std::move(change));
    }
    if (!ground.job.wishes.devices.empty()) {
        Change change{"any-standard", "", ground.job};
        change.job.wishes.devices.clear();
        all.push_back(std::move(change));
    }
}

void families(const Ground& ground, Changes& all) {
    const auto& offer = ground.job.wishes.offer;
    if (offer.empty()) return;
    for (std::size_t f = 0; f < tables::families; ++f) {
        const std::string word = tables::family_word(static_cast<tables::Family>(f));
        if (std::find(offer.begin(), offer.end(), word) != offer.end()) continue;
        Change change{"offer-family", word, ground.job};
        change.job.wishes.offer.push_back(word);
        all.push_back(std::move(change));
    }
}

}  // namespace

Changes wider_offer(const Ground& ground) {
    Changes all;
    head(ground, all);
    families(ground, all);
    const site::Wishes& wishes = ground.job.wishes;
    if (wishes.smallest_core.known) {
        Change change{"smaller-core", "", ground.job};
        change.job.wishes.smallest_core = {};
        all.push_back(std::move(change));
    }
    if (wishes.drop_run.known) {
        Change change{"larger-drop", significant(wishes.drop_run.low, 3), ground.job};
        change.job.wishes.drop_run = {};
        all.push_back(std::move(change));
    }
    for (Change& change : all) change.widens = true;
    return all;
}

}  // namespace toft::lever
