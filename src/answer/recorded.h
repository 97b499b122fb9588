#pragma once
// One scheme worked out with every line written down.

#include "answer/answer.h"
#include "worked/worked.h"

#include <string>
#include <vector>

namespace toft::answer {

/// A figure with its working.
struct Working {
    std::string name;  ///< what was asked for: a rule or a figure
    std::string title;
    double value = 0;
    std::string unit;
    std::vector<Line> lines;  ///< in the order they were worked out
};

/// A scheme's recording: settings, figures, findings, price. It points into job and catalogue.
class Recorded : public worked::Worked<Recording> {
public:
    Recorded(const Question& question, const study::RunScheme& scheme);

    /// `setting`: that of the question as things stand, which must outlive it.
    Recorded(const Question& question, const study::Setting<Silent>& setting,
             const study::RunScheme& scheme);

    /// Lines behind a finding's use; empty where it has none.
    std::vector<Line> lines_of(const rules::Finding<Recording>& finding) const;

    /// Names that `working` knows: rules with a figure, then figures.
    std::vector<std::string> names() const;

    /// The working of a rule or figure by name; none when there is no such name.
    std::optional<Working> working(const std::string& asked) const;

    /// Every citation on which any figure rests, each once.
    std::vector<const Citation*> citations() const;
};

}  // namespace toft::answer
