#pragma once
// The answer and faults as JSON text. Numbers carry nine significant digits, so that builds that
// differ in last bits print the same.

#include "answer/answer.h"
#include "answer/first.h"
#include "answer/recorded.h"
#include "base/outcome.h"

#include <string>

namespace toft::codec {

enum class Layout {
    indented,  ///< for people to read
    one_line   ///< a document a line, for other programs
};

/// The whole answer, `toft-answer/1`, ending with a line feed.
std::string write_answer(const answer::Answer& answer, Layout layout = Layout::indented);

/// `toft-first/1`, on one line.
std::string write_first(const answer::FirstAnswer& first);

/// Faults, `toft-faults/1`, ending with a line feed.
std::string write_faults(const Faults& faults, Layout layout = Layout::indented);

/// The working of one figure, `toft-working/1`.
std::string write_working(const answer::Working& working, const std::string& scheme_key);

}  // namespace toft::codec
