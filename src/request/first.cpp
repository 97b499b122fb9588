#include "codec/answer.h"
#include "request/body.h"
#include "request/verbs.h"

namespace toft::request {

namespace {

std::string first(Bench& bench, std::string_view text, const Asked& asked) {
    Body body(text);
    const std::string key = body.text("key", longest_key).value_or("");
    const auto work = body.work(bench);
    if (!work) return body.faults_text();
    answer::Question question = work->question();
    question.milliseconds = asked.milliseconds;
    question.go_on = told(asked);
    return codec::write_first(answer::first(question, key));
}

}  // namespace

Verb first_verb() {
    return {"first",
            "the answer as it is shown after each change: one scheme whole, the others in words",
            "toft-first/1",
            "first",
            false,
            job_and({{"key", "string", false, "of the scheme to show whole; the first, else"}}),
            first};
}

}  // namespace toft::request
