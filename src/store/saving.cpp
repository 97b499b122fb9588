// Save, undo and redo: how the current revision moves.

#include "store/jobs.h"
#include "store/records.h"
#include "store/store.h"

#include <fmt/format.h>

namespace toft::store {

namespace {

/// What the edit comes to beside what was saved meanwhile; clashes go into `saving`.
std::string put_together(Work& work, const JobRecord& job, const Edit& edit, Saving& saving) {
    const std::string base = text_of(work, job.number, edit.base);
    if (!work.sound() || edit.base == job.current || merge::same_job(edit.job, job.text)) {
        return edit.job;
    }
    auto merged = merge::merge(base, edit.job, job.text);
    if (!merged) {
        for (Fault& fault : merged.error()) work.fail(std::move(fault));
        return {};
    }
    saving.clashes = std::move(merged->clashes);
    saving.merged = !merge::same_job(merged->job, edit.job);
    return saving.merged ? merged->job : edit.job;
}

void not_current(Work& work, const JobRecord& job, long base) {
    if (!work.sound() || base == job.current) return;
    work.fail("old-base", fmt::format("the job is at revision {} by now, not {}: load it and see "
                                      "what is to be undone",
                                      job.current, base));
}

}  // namespace

Outcome<Saving> save(Store& store, const Edit& edit, const Act& act) {
    Faults faults = unfit_job(edit.job);
    if (!faults.empty()) return failed(std::move(faults));
    Work work(store.database(), Work::Kind::writes);
    const JobRecord job = job_record(work, edit.id);
    Saving saving;
    std::string text = work.sound() ? put_together(work, job, edit, saving) : "";
    if (!work.sound()) return failed(work.faults());
    if (!saving.clashes.empty()) {
        saving.merged_job = std::move(text);
        saving.state = state_of(work, edit.id);
        return finished(work, std::move(saving));
    }
    if (!merge::same_job(text, job.text)) {
        for (Fault& fault : unfit_job(text)) work.fail(std::move(fault));  // together too large
        add_revision(work, job.number, without_mark(text), job.current, act);
    }
    saving.saved = true;
    saving.state = state_of(work, edit.id);
    return finished(work, std::move(saving));
}

Outcome<JobState> undo(Store& store, const std::string& id, long base, const Act& act) {
    Work work(store.database(), Work::Kind::writes);
    const JobRecord job = job_record(work, id);
    not_current(work, job, base);
    if (work.sound() && !job.parent) {
        work.fail("nothing-to-undo", "this is the first revision: there is nothing to undo");
    }
    if (work.sound()) {
        work.run("UPDATE revision SET redo = ? WHERE job = ? AND revision = ?", job.current,
                 job.number, *job.parent);
        make_current(work, job.number, *job.parent, act);
    }
    return finished(work, state_of(work, id));
}

Outcome<JobState> redo(Store& store, const std::string& id, long base, const Act& act) {
    Work work(store.database(), Work::Kind::writes);
    const JobRecord job = job_record(work, id);
    not_current(work, job, base);
    if (work.sound() && !job.redo) {
        work.fail("nothing-to-redo", "nothing was undone after this revision");
    }
    if (work.sound()) make_current(work, job.number, *job.redo, act);
    return finished(work, state_of(work, id));
}

}  // namespace toft::store
