#pragma once
// What the program does when asked: each command reads, calls the engine, writes, and returns the
// exit code. 0 done, 1 no sound scheme, 2 the input is at fault, 3 the program is at fault, 4 wrong
// usage, 5 sound only on conditions not yet known, 6 asked to stop before it was through.

#include "answer/reach.h"
#include "base/program.h"
#include "codec/quick.h"
#include "tolerance/varied.h"

#include <string>

namespace toft::cli {

enum ExitCode {
    done = 0,
    no_sound_scheme = 1,
    bad_input = 2,
    program_fault = 3,
    wrong_usage = 4,
    conditional = 5,
    stopped = 6
};

struct DesignArguments {
    std::string job;  ///< empty when three facts stand for it
    codec::QuickFacts facts;
    bool json = false;
    bool all = false;
};

struct BatchArguments {
    std::string jobs = "-";    ///< one a line; "-" for standard input
    std::string out;           ///< empty for standard output
    bool resume = false;       ///< goes on with `out`
    unsigned threads = 0;      ///< 0 for one a core
    std::size_t schemes = 24;  ///< listed in each answer at most
};

struct ExplainArguments {
    std::string job;
    std::string name;    ///< rule or figure; empty lists them
    std::string scheme;  ///< key or rank; empty for the first
    std::string run;     ///< of a job of several; empty for the first from the house
    bool json = false;
    bool all = false;  ///< the list, then the working of every name on it
};

struct TablesArguments {
    std::string job;
    std::string run;  ///< of a job of several; empty for the first from the house
    answer::ReachWish wish;
    bool json = false;
};

struct GroundArguments {
    std::string job;
    bool json = false;
};

struct WhyArguments {
    std::string job;
    std::string run;  ///< of a job of several; empty for all
    bool json = false;
};

/// Of `ask`, `levers` and `later`.
struct SurveyArguments {
    std::string job;
    bool json = false;
};

struct ToleranceArguments {
    std::string job;
    std::string scheme;  ///< key or rank; empty for the first
    std::string run;     ///< of a job of several; empty for the first from the house
    tolerance::Wish wish;
    bool json = false;
};

struct DarkArguments {
    std::string job;
    int rank = 1;
    bool json = false;
};

struct DrawArguments {
    std::string job;
    std::string out;  ///< its ending says which kind of file; empty for SVG to standard output
    int rank = 1;
    std::string run;                ///< of a job of several; empty for the first from the house
    std::string picture = "place";  ///< a name of gallery::pictures()
    int dpi = 200;                  ///< of a PNG
    std::string date;               ///< a PDF names as its day of making; empty for today
    std::string upstream;           ///< devices of the picture of a pair, in words; empty: the
    std::string downstream;         ///< operator's fuse, the head of the run
    double width = 0;               ///< of an SVG or a PNG, user units; 0 for the paper layout
};

struct PricesArguments {
    std::string check;  ///< a book to look at; empty: the book in use is printed
    bool json = false;
    bool csv = false;
};

/// What this program calls itself.
inline std::string version() { return std::string(program_name) + " " + program_version; }

/// The demo job, on screen and as a picture in out/.
int demo();
int design(const DesignArguments& arguments);
int batch(const BatchArguments& arguments);
int tables(const TablesArguments& arguments);
int ground(const GroundArguments& arguments);
int explain(const ExplainArguments& arguments);
int why(const WhyArguments& arguments);
int ask(const SurveyArguments& arguments);
int later(const SurveyArguments& arguments);
int levers(const SurveyArguments& arguments);
int tolerance_of(const ToleranceArguments& arguments);
int dark(const DarkArguments& arguments);
int draw(const DrawArguments& arguments);

struct PapersArguments {
    std::string job;
    std::string folder;
    std::vector<std::string> only;  ///< kinds; empty for all
    bool list_prices = false;       ///< in the lists of materials
    int rank = 1;
    std::string date;  ///< empty for today
};

/// Writes the papers of a job into a folder.
int papers(const PapersArguments& arguments);
int prices(const PricesArguments& arguments);
int rules(bool json);
int sources();
int schema(const std::string& which);

}  // namespace toft::cli
