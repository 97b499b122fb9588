#pragma once
// What is said of several buildings, said once.

#include <string>
#include <vector>

namespace toft {

/// "Gym", "Gym and Stable"; three or more that are only numbered on become "Pillar 1 to 4". In the
/// order given, but those that differ in their number only stand together.
std::string names_together(const std::vector<std::string>& names);

/// Lines, each with the buildings it was said of.
class Told {
public:
    /// Once for each building, however often.
    void add(const std::string& line, const std::string& building);

    /// In the order they were first said; with the buildings in front unless it goes for all `of`.
    std::vector<std::string> lines(std::size_t of) const;

    struct Line {
        std::string says;
        std::vector<std::string> buildings;
    };
    const std::vector<Line>& all() const { return all_; }

private:
    std::vector<Line> all_;
};

}  // namespace toft
