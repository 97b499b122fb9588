#include "answer/first.h"

#include "answer/design_parts.h"
#include "study/ground_memo.h"

namespace toft::answer {

namespace {

FirstAnswer first_of_tree(const Question& question, const std::string& key) {
    study::GroundMemo memo;
    Question q = question;
    if (!q.memo) q.memo = &memo;
    q.in_short = true;
    FirstAnswer first;
    first.answer = design_tree(q);
    first.chosen = chosen_of(first.answer.schemes, key);
    return first;
}

}  // namespace

FirstAnswer first(const Question& question, const std::string& key) {
    return question.job.runs.size() > 1 ? first_of_tree(question, key)
                                        : first_of_run(question, key);
}

}  // namespace toft::answer
