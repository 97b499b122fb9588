#include "answer/unknowns.h"
#include "codec/unknowns.h"
#include "request/body.h"
#include "request/verbs.h"

namespace toft::request {

namespace {

std::string ask(Bench& bench, std::string_view text, const Asked& asked) {
    Body body(text);
    const auto work = body.work(bench);
    if (!work) return body.faults_text();
    answer::Question question = work->question();
    question.told = counted(asked);
    return codec::write_ask(answer::ask(question));
}

}  // namespace

Verb ask_verb() {
    return {"ask",        "what to go and find out, that first which is most worth it",
            "toft-ask/1", "ask",
            true,         job_and({}),
            ask};
}

}  // namespace toft::request
