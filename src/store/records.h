#pragma once
// Rows of jobs and revisions within a piece of work. Private to store.

#include "store/jobs.h"
#include "store/work.h"

namespace toft::store {

/// A job as its row has it.
struct JobRecord {
    long number = 0;
    long current = 0;
    std::string text;  ///< of the current revision
    std::optional<long> parent;
    std::optional<long> redo;
};

/// A job by its id; `no-such-job` stops the work where there is none.
JobRecord job_record(Work& work, const std::string& id);

/// The job as callers see it; the job must be there.
JobState state_of(Work& work, const std::string& id);

/// The text of one revision; `no-such-revision` stops the work where there is none.
std::string text_of(Work& work, long job, long revision);

/// A new revision, current from now on; its number.
long add_revision(Work& work, long job, const std::string& text, std::optional<long> parent,
                  const Act& act);

/// Makes a revision the current one, and its words the ones to be found.
void make_current(Work& work, long job, long revision, const Act& act);

/// A job without revisions yet; its number.
long add_job(Work& work, const std::string& id, const Act& act);

/// What forbids storing `text` as a job; empty when it may be.
Faults unfit_job(const std::string& text);

/// SQLite's JSON takes no byte order mark; ours passes it over.
std::string without_mark(const std::string& text);

/// 1 to 64 letters, digits, "-" or "_".
bool good_id(const std::string& id);

Fault bad_id(const std::string& id);

}  // namespace toft::store
