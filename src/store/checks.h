#pragma once
// What photos, readings and papers must be like, whether they come one by one or in a file of an
// export. Private to store.

#include "store/papers.h"
#include "store/photos.h"
#include "store/readings.h"

namespace toft::store {

/// Who did something and when: a time as the store writes it, a name of at most
/// `longest_author` bytes without control characters, words of at most `most_words` bytes.
void check_act(const Act& act, std::size_t most_words, const std::string& pointer, Faults& faults);

/// Of each all faults, the job and whether its pointers lead somewhere aside; `pointer` leads
/// theirs.
void check_photo(const NewPhoto& photo, const std::string& pointer, Faults& faults);
void check_reading(const NewReading& reading, const std::string& pointer, Faults& faults);
void check_issue(const NewIssue& issue, const std::string& pointer, Faults& faults);

}  // namespace toft::store
