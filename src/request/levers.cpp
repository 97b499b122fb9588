#include "answer/levers.h"

#include "codec/levers.h"
#include "request/body.h"
#include "request/verbs.h"

namespace toft::request {

namespace {

std::string levers(Bench& bench, std::string_view text, const Asked& asked) {
    Body body(text);
    const auto work = body.work(bench);
    if (!work) return body.faults_text();
    answer::Question question = work->question();
    question.told = counted(asked);
    return codec::write_levers(answer::levers(question));
}

}  // namespace

Verb levers_verb() {
    return {"levers",
            "what one change on site or in the wishes would bring",
            "toft-levers/1",
            "levers",
            true,
            job_and({}),
            levers};
}

}  // namespace toft::request
