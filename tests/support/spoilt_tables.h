#pragma once
// The embedded tables with one thing spoilt, to see that the loader refuses it.

#include "tables/catalogue.h"

#include <string>
#include <vector>

namespace toft::support {

class SpoiltTables {
public:
    /// A copy of all embedded files.
    SpoiltTables();

    /// Replaces the first `from` of a file; both must be there.
    SpoiltTables& change(const std::string& file, const std::string& from, const std::string& to);
    /// Replaces every `from` of a file; at least one must be there.
    SpoiltTables& change_all(const std::string& file, const std::string& from,
                             const std::string& to);
    /// Leaves a file out.
    SpoiltTables& remove(const std::string& file);
    /// Keeps the first `lines` lines of a file.
    SpoiltTables& keep_lines(const std::string& file, int lines);

    /// What the loader says; empty when it accepts.
    Faults faults() const;
    /// True when a fault speaks of that place and holds those words.
    bool refused(const std::string& pointer, const std::string& words) const;

private:
    std::string& text(const std::string& file);

    std::vector<std::string> names_;
    std::vector<std::string> texts_;
};

}  // namespace toft::support
