#include "codec/answer.h"
#include "request/body.h"
#include "request/verbs.h"

namespace toft::request {

namespace {

std::string design(Bench& bench, std::string_view text, const Asked& asked) {
    Body body(text);
    const bool all = body.flag("all");
    const auto work = body.work(bench);
    if (!work) return body.faults_text();
    answer::Question question = work->question();
    question.all = all;
    question.milliseconds = asked.milliseconds;
    question.go_on = told(asked);
    return codec::write_answer(answer::design(question), codec::Layout::one_line);
}

}  // namespace

Verb design_verb() {
    return {"design",
            "the whole answer: every scheme shown with all its figures, reasons and sources",
            "toft-answer/1",
            "answer",
            true,
            job_and({{"all", "boolean", false, "every sound scheme that nothing beats"}}),
            design};
}

}  // namespace toft::request
