#pragma once
// Papers as they were issued. An issue is frozen: its bytes never change and never go.

#include "base/outcome.h"
#include "store/act.h"

#include <cstddef>
#include <string>
#include <vector>

namespace toft::store {

struct PaperFile {
    std::string name;  ///< of the file: letters, digits, ".", "-", "_"; no two alike in an issue
    std::string title;
    std::string type;      ///< media type, `paper_type` of its name
    std::size_t size = 0;  ///< bytes; set when read
    std::string bytes;     ///< empty in a list
};

struct Issue {
    long issue = 0;  ///< number in this store, never given twice
    std::string job;
    long revision = 0;  ///< of the job, that the papers show
    std::string at;
    std::string by;
    std::string what;  ///< words, such as which scheme they show
    std::vector<PaperFile> files;
};

struct NewIssue {
    std::string job;
    long revision = 0;
    std::vector<PaperFile> files;  ///< at least one
};

/// The media type of a file by the ending of its name; empty for an ending that no paper has. Never
/// one that a browser runs anything of.
std::string paper_type(const std::string& name);

/// Faults: `no-such-job`, `no-such-revision`, `no-files`, `bad-name`, `bad-type`, all at once.
Outcome<Issue> issue_papers(Store& store, const NewIssue& issue, const Act& act);

/// All of a job, newest first, files without their bytes. Faults: `no-such-job`.
Outcome<std::vector<Issue>> issues(Store& store, const std::string& job);

/// One file with its bytes. Faults: `no-such-paper`.
Outcome<PaperFile> paper(Store& store, long issue, const std::string& name);

}  // namespace toft::store
