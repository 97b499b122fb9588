#pragma once
// What a page, a server or another program asks of the engine: a verb and a JSON body in, JSON
// text out. The one thing that the WebAssembly module and the server both call.
// Page: docs/requests.md.

#include "answer/answer.h"
#include "request/bench.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace toft::request {

/// What may come with a question beside its body.
struct Asked {
    /// Told now and then of long work: how much is done, in no unit but growing, and words for a
    /// person. Once it says no, the best so far is the answer. May be empty.
    std::function<bool(double done, const std::string& words)> progress = {};
    double (*milliseconds)() = nullptr;  ///< a clock, if there is one
};

/// A member of a verb's body.
struct Taken {
    const char* key;
    const char* kind;  ///< as JSON Schema calls it: object, string, integer, number, boolean
    bool required;
    const char* says;
};

struct Verb {
    const char* name;
    const char* says;    ///< what it is asked for
    const char* gives;   ///< format of the answer
    const char* schema;  ///< of that format, as `toft schema` names it; empty where it has none
    bool takes_long;     ///< it tells its progress
    std::vector<Taken> takes;
    std::string (*work)(Bench& bench, std::string_view body, const Asked& asked);
};

/// All of them.
const std::vector<Verb>& verbs();

/// Those of the module that a page loads first.
const std::vector<Verb>& first_verbs();

/// Null when none has that name.
const Verb* find_verb(const std::vector<Verb>& verbs, std::string_view name);

/// The answer to one of `verbs`, or toft-faults/1 with pointers into the job ("/intake/ze_ohm") or
/// into the body ("/key"). Never throws. The bench serves one call at a time.
std::string answer(const std::vector<Verb>& verbs, Bench& bench, std::string_view verb,
                   std::string_view body, const Asked& asked = {});

/// … to any verb.
std::string answer(Bench& bench, std::string_view verb, std::string_view body,
                   const Asked& asked = {});

}  // namespace toft::request
