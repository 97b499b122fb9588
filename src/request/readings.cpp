#include "answer/first.h"
#include "codec/scheme.h"
#include "paper/expected.h"
#include "request/verbs.h"
#include "request/way.h"

namespace toft::request {

namespace {

using codec::Json;

Json figure_json(const std::optional<double>& x) { return x ? codec::finite(*x) : Json(); }

/// Words without a place belong to the reading before.
void add(const tables::TestStep& step, const paper::Expected& one, Json& readings) {
    if (one.where.empty() && !readings.empty()) {
        auto& says = readings.back()["says"].get_ref<std::string&>();
        says += "; " + one.expect + ": " + one.limit;
        return;
    }
    readings.push_back({{"step", step.key},
                        {"what", step.what},
                        {"where", one.where},
                        {"unit", one.unit.empty() ? Json() : Json(one.unit)},
                        {"expected", figure_json(one.value)},
                        {"limit", figure_json(one.bound)},
                        {"at_least", one.at_least},
                        {"says", "expect " + one.expect + "; limit: " + one.limit},
                        {"how", step.how},
                        {"clause", step.clause},
                        {"dead", step.dead},
                        {"instrument", paper::instrument_of(step)}});
}

std::string readings(Bench& bench, std::string_view text, const Asked& asked) {
    Body body(text);
    const std::string which = body.text("key", longest_key).value_or("");
    const auto work = body.work(bench);
    if (!work) return body.faults_text();
    answer::Question question = work->question();
    question.go_on = told(asked);
    const answer::FirstAnswer found = answer::first(question, which);
    const auto place = scheme_named(found.answer, which);
    if (!place.is) return place.faults;
    Json json{{"format", "toft-readings/1"}, {"key", nullptr}, {"readings", Json::array()}};
    if (!found.answer.schemes.empty()) {
        json["key"] = found.answer.schemes[*place.is].key;
        const paper::Subject subject{question.catalogue, work->job, found.answer, *place.is, ""};
        for (const tables::TestStep& step : question.catalogue.tests) {
            for (const paper::Expected& one : paper::expected_of(subject, step)) {
                add(step, one, json["readings"]);
            }
        }
    }
    return json.dump(-1, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace

Verb readings_verb() {
    return {"readings",
            "what will be measured when the work is tested, and what to expect of it",
            "toft-readings/1",
            "",
            false,
            job_and({{"key", "string", false, "of a scheme of the answer; the first, else"}}),
            readings};
}

}  // namespace toft::request
