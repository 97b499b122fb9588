#include "base/dates.h"
#include "base/nearest.h"
#include "drawing/svg.h"
#include "page/pages.h"
#include "portfolio/kinds.h"
#include "request/verbs.h"
#include "request/way.h"

namespace toft::request {

namespace {

const paper::Kind* kind_named(Body& body) {
    const std::string name = body.needed("kind");
    const paper::Kind* kind = paper::find_kind(name);
    if (kind || name.empty()) return kind;
    std::vector<std::string> names;
    for (const paper::Kind& one : paper::kinds()) names.emplace_back(one.file);
    body.fault(
        {"unknown-paper", "/kind", "there is no paper " + name, nearest_word(name, names), names});
    return nullptr;
}

std::string date_named(Body& body) {
    const std::string date = body.needed("date");
    if (!date.empty() && days_after(date, 0).empty()) {
        body.fault(
            {"date", "/date", fmt::format("\"{}\" is no day; write 2026-11-25", date), "", {}});
    }
    return date;
}

std::string sheets_of(const page::Paper& paper) {
    codec::Json json{{"format", "toft-paper/1"}, {"title", paper.name}};
    json["sheets"] = codec::Json::array();
    for (const drawing::Scene& sheet : page::pages(paper)) {
        json["sheets"].push_back(drawing::to_svg(sheet));
    }
    return json.dump(-1, ' ', false, codec::Json::error_handler_t::replace) + "\n";
}

std::string paper_of(Bench& bench, std::string_view text, const Asked& asked) {
    Body body(text);
    const paper::Kind* kind = kind_named(body);
    const std::string date = date_named(body);
    const auto rank = body.whole("rank", {1, 999});
    std::string which = body.text("key", longest_key).value_or("");
    if (rank) which = std::to_string(*rank);
    const auto work = body.work(bench);
    if (!work || !kind) return body.faults_text();
    answer::Question question = work->question();
    question.go_on = told(asked);
    const answer::Answer answer = answer::design(question);
    if (answer.search.stopped) {
        return fault_text("stopped", "", "stopped before it was through: no paper is written");
    }
    const auto place = scheme_named(answer, which);
    if (!place.is) return place.faults;
    const bool scheme = !answer.schemes.empty();
    if (!scheme && !kind->without_scheme) {
        return fault_text("no-sound-scheme", "", "no scheme is sound: this paper needs one");
    }
    paper::Subject subject{question.catalogue, work->job, answer, *place.is, date};
    if (scheme) subject.workings = paper::workings_of(question, answer.schemes[*place.is]);
    return sheets_of(paper::written(*kind, subject));
}

}  // namespace

Verb paper_verb() {
    return {"paper",
            "the sheets of a paper, each as SVG",
            "toft-paper/1",
            "",
            true,
            job_and({{"kind", "string", true, "which paper"},
                     {"date", "string", true, "day of making, year-month-day"},
                     {"rank", "integer", false, "of the scheme; the first, else"},
                     {"key", "string", false, "of the scheme, in place of its rank"}}),
            paper_of};
}

}  // namespace toft::request
