#include "outlook/tolerances.h"

#include "answer/describe.h"
#include "answer/outline.h"
#include "base/text.h"
#include "study/ground_memo.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::outlook {

namespace {

std::vector<std::string> notes_of(const ToleranceAnswer& a) {
    std::vector<std::string> notes{
        "Figures vary independently of each other within the ranges named and not beyond: a chance "
        "is as good as those ranges, and no promise.",
        "Facts nobody gave stay at their worse end, whatever the chance that they are better."};
    if (a.behind) {
        notes.emplace_back(
            "The run is fed behind others: what they leave stays as their own figures are stated.");
    }
    if (a.found.varied.empty()) {
        notes.emplace_back(
            "No figure of the survey has a range or a tolerance: state low and high, or ask for "
            "one.");
    }
    return notes;
}

}  // namespace

std::string chance_words(const tolerance::Share& share) {
    if (share.error <= 0) return share.holds > 0.5 ? "always" : "never";
    const double most = 1 - share.error;
    if (share.holds >= 1) {
        return fmt::format("more than {} %", fixed(std::floor(most * 1000) / 10, 1));
    }
    if (share.holds <= 0) {
        return fmt::format("less than {} %", fixed(std::ceil(share.error * 1000) / 10, 1));
    }
    if (share.holds > 0.9995) return "more than 99.9 %";
    if (share.holds < 0.0005) return "less than 0.1 %";
    return fixed(share.holds * 100, 1) + " %";
}

std::string figure_words(double value, const std::string& unit) {
    const std::string number = significant(value, 3);
    if (unit.empty()) return number;
    if (unit == "ohm") return number + " Ω";
    if (unit == "ohm m") return number + " Ω·m";
    if (unit == "C") return number + " °C";
    if (unit == "K m/W") return number + " K·m/W";
    return number + " " + unit;
}

ToleranceAnswer tolerances(const answer::Question& q, const study::RunScheme& scheme,
                           const tolerance::Wish& wish) {
    ToleranceAnswer a;
    a.job = q.job.title;
    a.run = q.job.runs[q.run].id;
    a.scheme_key = study::scheme_key(scheme);
    Silent silent;
    study::GroundMemo memo;
    study::RunAt at = answer::run_at(q, scheme.phases);
    if (!at.memo) at.memo = &memo;
    a.scheme = answer::brief_words(study::prepare(silent, q.catalogue, q.job, at, {}), scheme);
    a.behind = q.incoming != nullptr;
    a.found = tolerance::tolerance_of({q.catalogue, q.job, at}, scheme, wish);
    a.notes = notes_of(a);
    a.cautions = answer::standing_cautions(q.book);
    return a;
}

}  // namespace toft::outlook
