#pragma once
// Jobs and their revisions. Revisions are numbered from 1 within a job and never change or go.
// Which one is current is a pointer into them: undo moves it back to the revision that the current
// one was made from, redo forth again. So after an undo the current number is smaller than before:
// ask whether it is another, not whether it is greater. A change made after an undo gets the next
// free number; what was undone stays in the history but can no longer be redone.

#include "base/outcome.h"
#include "merge/merge.h"
#include "store/act.h"

#include <string>
#include <vector>

namespace toft::store {

/// A job as it stands.
struct JobState {
    std::string id;
    long revision = 0;  ///< the current one
    std::string job;    ///< toft-job/1, JSON text
    std::string title;  ///< the job's `title`; empty where it has none
    bool archived = false;
    std::string changed_at;  ///< last save, undo or redo
    std::string changed_by;
    bool can_undo = false;
    bool can_redo = false;
};

/// A job in a list.
struct JobRow {
    std::string id;
    std::string title;
    long revision = 0;
    std::string changed_at;
    std::string changed_by;
    bool archived = false;
};

/// One revision.
struct Revision {
    long revision = 0;
    std::string at;
    std::string by;
    std::string what;
    bool undone = false;  ///< not among those the current one was made from
    std::string job;      ///< empty in a list
};

/// What somebody wants kept: the job as they have it, and the revision they began from.
struct Edit {
    std::string id;
    long base = 0;
    std::string job;
};

/// What became of it. Either saved, or clashes and nothing written.
struct Saving {
    bool saved = false;
    bool merged = false;  ///< it was put together with what others had saved since
    JobState state;       ///< as the job stands now
    std::vector<merge::Clash> clashes;
    std::string merged_job;  ///< with clashes: all that went together, theirs where they clash
};

/// Which jobs a list shall hold.
struct Find {
    std::string text;       ///< words, each the beginning of a word in the title or any text of
                            ///< the current revision, in any case and without accents; empty: all
    bool archived = false;  ///< the archived ones too
};

/// A new job with its first revision. `id`: 1 to 64 letters, digits, "-" or "_". The same job made
/// twice under one id is made once. Faults: `bad-id`, `taken` (another job has that id), those of
/// `codec::parse_document`, `not-a-job` (no JSON object). Whether the job is complete is not asked.
Outcome<JobState> create(Store& store, const std::string& id, const std::string& job,
                         const Act& act);

/// Faults: `no-such-job`.
Outcome<JobState> load(Store& store, const std::string& id);

/// Saves. Where `base` is not the current revision, what changed since `base` is merged with what
/// was saved meanwhile. What changes nothing makes no revision (so a save repeated because its
/// answer was lost is harmless). Faults: `no-such-job`, `no-such-revision` (the base), those of
/// `codec::parse_document`, `not-a-job`.
Outcome<Saving> save(Store& store, const Edit& edit, const Act& act);

/// Back to the revision the current one was made from. Faults: `no-such-job`, `old-base` (`base`
/// is not the current revision), `nothing-to-undo`.
Outcome<JobState> undo(Store& store, const std::string& id, long base, const Act& act);

/// Forth again to what was undone last. Faults: `no-such-job`, `old-base`, `nothing-to-redo`.
Outcome<JobState> redo(Store& store, const std::string& id, long base, const Act& act);

/// Puts a job away, or takes it out again. Faults: `no-such-job`.
Outcome<JobState> set_archived(Store& store, const std::string& id, bool archived);

/// Changed last first.
Outcome<std::vector<JobRow>> jobs(Store& store, const Find& find = {});

/// Newest first, without their jobs. Faults: `no-such-job`.
Outcome<std::vector<Revision>> revisions(Store& store, const std::string& id);

/// One with its job. Faults: `no-such-job`, `no-such-revision`.
Outcome<Revision> revision(Store& store, const std::string& id, long revision);

}  // namespace toft::store
