#include "answer/selectivity.h"

#include "base/limit.h"
#include "base/text.h"
#include "tables/device_words.h"

#include <fmt/format.h>

namespace toft::answer {

namespace {

std::string words_of(const tables::Device* device, const char* otherwise) {
    return device ? tables::device_words(*device) : otherwise;
}

const char* from_words(study::FarFrom from) {
    switch (from) {
        case study::FarFrom::survey:
            return "";
        case study::FarFrom::design:
            return ", as designed here";
        case study::FarFrom::load:
            return ", chosen by the load";
    }
    return "";
}

std::string amps(double value) { return significant(value, 4) + " A"; }

}  // namespace

template <class L>
SelectivityAnswer selectivity_answer(const study::SelectivePair<L>& pair,
                                     const study::FarDevice* far) {
    SelectivityAnswer a;
    a.upstream = words_of(pair.upstream, "the operator's fuse");
    a.downstream = words_of(pair.downstream, "a circuit's device");
    if (!far) {
        a.protects = "the house";
    } else {
        a.protects = "the outbuilding";
        if (!far->circuits.empty()) a.downstream += " (" + far->circuits + ")";
        if (far->device) a.downstream += from_words(far->from);
    }
    a.verdict = device::selective_word(pair.result.verdict);
    a.to_a = plain(pair.result.to).number();
    a.prospective_a = plain(pair.prospective).number();
    if (pair.result.gap()) {
        a.gap_from_a = pair.result.gap_from.number();
        a.gap_to_a = pair.result.gap_to.number();
    }
    a.says = pair.result.why;
    return a;
}

template SelectivityAnswer selectivity_answer(const study::SelectivePair<Silent>&,
                                              const study::FarDevice*);
template SelectivityAnswer selectivity_answer(const study::SelectivePair<Recording>&,
                                              const study::FarDevice*);

std::string selectivity_words(const SelectivityAnswer& pair) {
    std::string text = pair.verdict;
    if (pair.to_a > 0 && (pair.verdict == "partly" || pair.verdict == "selective")) {
        text = fmt::format("selective up to {}", amps(pair.to_a));
        if (!within(pair.prospective_a, pair.to_a)) {
            text += fmt::format(" of {}", amps(pair.prospective_a));
        }
    }
    if (pair.gap_from_a && pair.gap_to_a) {
        text += fmt::format(", but of overloads of {} to {} nothing is promised",
                            significant(*pair.gap_from_a, 4), amps(*pair.gap_to_a));
    }
    return text;
}

}  // namespace toft::answer
