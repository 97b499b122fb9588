#include "base/nearest.h"
#include "codec/answer.h"
#include "request/verbs.h"
#include "request/way.h"

namespace toft::request {

namespace {

std::string working(const answer::Question& question, const study::RunScheme& scheme,
                    const std::string& figure) {
    const answer::Recorded recorded(question, scheme);
    const auto found = recorded.working(figure);
    if (found) return codec::write_working(*found, study::scheme_key(scheme));
    const std::vector<std::string> names = recorded.names();
    return fault_text("unknown-figure", "/figure", "there is no figure " + figure,
                      nearest_word(figure, names), names);
}

std::string explain(Bench& bench, std::string_view text, const Asked&) {
    Body body(text);
    const std::string figure = body.needed("figure");
    const std::string which = body.text("key", longest_key).value_or("");
    const std::string run = body.text("run").value_or("");
    const auto work = body.work(bench);
    if (!work) return body.faults_text();
    const auto way = way_of(*work, which, run);
    if (!way.is) return way.faults;
    return working(question_of(*work, *way.is), way.is->scheme, figure);
}

}  // namespace

Verb explain_verb() {
    return {
        "explain",
        "a figure or the use of a rule with its working, line by line",
        "toft-working/1",
        "",
        false,
        job_and({{"figure", "string", true, "name of a rule or figure"},
                 {"key", "string", false,
                  "of a buildable scheme of the run, sound or not, or its rank; the first, else"},
                 {"run", "string", false, "id; the first from the house, else"}}),
        explain};
}

}  // namespace toft::request
