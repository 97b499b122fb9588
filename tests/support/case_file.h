#pragma once
// Published worked examples as text that an electrician can read. One file holds examples of one
// method:
//
//   # a remark
//   method earth fault loop
//
//   case ten metres of 1.5/1.0 twin and earth
//   source a forum thread, https://example.org/thread, locator second answer
//   given Ze 0.6 ohm
//   given length 10 m
//   expect Zs 0.96 ohm within 0.5 %
//   expect I 13 kA or more
//   refuse Zs 0.9 ohm
//   because the second answer forgets that the cable is warm
//
// A `refuse` line holds a published figure that is wrong: reproducing it to one per cent is a
// failure. `source` and `locator` are never missing, nor is a `because` where something is refused.

#include <iosfwd>
#include <map>
#include <string>
#include <vector>

namespace toft::support {

/// What a check asks of a result.
enum class Asks { close, at_least, at_most, different };

struct Check {
    Asks asks = Asks::close;
    std::string name;
    double value = 0;      ///< in the coherent unit
    double tolerance = 0;  ///< relative
    std::string text;      ///< the line itself
};

struct PublishedCase {
    std::string file;
    int line = 0;
    std::string method;
    std::string title;
    std::string source;
    std::string locator;
    std::string because;
    std::map<std::string, double> numbers;     ///< given, in the coherent unit
    std::map<std::string, std::string> words;  ///< given with the unit "word"
    std::vector<Check> checks;

    /// A given figure; throws when the case does not give it.
    double number(const std::string& name) const;
    /// A given figure, or `otherwise`.
    double number(const std::string& name, double otherwise) const;
    const std::string& word(const std::string& name) const;
};

/// How a test program names the case.
void PrintTo(const PublishedCase& published, std::ostream* out);

/// A case file's cases, or what is wrong with it, one sentence each.
struct CaseFile {
    std::vector<PublishedCase> cases;
    std::vector<std::string> faults;
};

CaseFile read_cases(const std::string& file, const std::string& text);

/// One sentence for each check that `results` does not meet.
std::vector<std::string> unmet(const PublishedCase& published,
                               const std::map<std::string, double>& results);

}  // namespace toft::support
