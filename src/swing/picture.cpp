#include "swing/picture.h"

#include "base/text.h"
#include "swing/rows.h"

#include <fmt/format.h>

namespace toft::swing {

namespace {

constexpr const char* kind = "How sure it is";

std::string sentence(const outlook::ToleranceAnswer& a) {
    const tolerance::Tolerance& t = a.found;
    if (t.varied.empty()) {
        return "No figure of the survey has a range or a tolerance, so nothing moves.";
    }
    if (t.robust.error <= 0) {
        return t.robust.holds > 0.5
                   ? "Every rule holds wherever in its range each figure is."
                   : "At least one rule fails wherever in its range each figure is.";
    }
    return fmt::format(
        "The chance that every rule holds is {}, while the figures of the survey "
        "are other than stated.",
        outlook::chance_words(t.robust));
}

void explain(const outlook::ToleranceAnswer& a, parts::WordColumn& column) {
    column.heading("the scheme");
    terrain::say(column, a.scheme);
    column.heading("how to read it");
    terrain::say_signed(column, low_bar({8, 3, 34, 16}), "the figure at its low end", "");
    terrain::say_signed(column, high_bar({8, 3, 34, 16}), "the figure at its high end", "");
    terrain::say(
        column,
        "Each row is one figure, all others as they are likeliest. Upright line: that figure "
        "as it is likeliest too. Dashed line: the limit; right of it the rule fails.");
    if (a.found.samples > 0) {
        terrain::say(column,
                     fmt::format("Chances from {} cases, give or take {} %.", a.found.samples,
                                 significant(a.found.robust.error * 100, 2)));
    }
    for (const auto& s : a.found.stays) {
        terrain::say_small(column, "not known, at its worse end: " + s.says);
    }
    for (const std::string& note : a.notes) terrain::say_small(column, note);
}

}  // namespace

drawing::Scene tolerance_picture(const site::Job& job, const std::string& building,
                                 const outlook::ToleranceAnswer* tolerances, double width) {
    terrain::Content content{kind, terrain::building_words(job, building), "", {}, {}, {}};
    if (!tolerances) {
        content.sentence = "No scheme is sound, so there is none to be more or less sure of.";
        return terrain::lay_out(job, content, width);
    }
    content.sentence = sentence(*tolerances);
    content.draw = [&](const terrain::Space& room) { return rows(tolerances->found, room); };
    content.explain = [&](parts::WordColumn& column) { explain(*tolerances, column); };
    return terrain::lay_out(job, content, width);
}

}  // namespace toft::swing
