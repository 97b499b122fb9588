#pragma once
// Asking the engine in tests as a page does, with the jobs that come with the program.

#include "request/request.h"
#include "support/examples.h"

#include <nlohmann/json.hpp>

namespace toft::request {

using Tree = nlohmann::ordered_json;

inline Bench& bench() {
    static Bench loaded = support::need(Bench::load(), "the bench");
    return loaded;
}

inline std::string text_of(const std::string& verb, const Tree& body, const Asked& asked = {}) {
    return answer(bench(), verb, body.dump(), asked);
}

/// The answer, which must be JSON.
inline Tree ask_for(const std::string& verb, const Tree& body) {
    return Tree::parse(text_of(verb, body));
}

inline Tree example(const std::string& name) {
    return Tree::parse(support::project_text("examples/" + name + ".json"));
}

/// "pointer code" of each fault; empty where the answer is none of faults.
inline std::vector<std::string> faults_of(const Tree& answer) {
    std::vector<std::string> all;
    if (!answer.is_object() || answer.value("format", "") != "toft-faults/1") return all;
    for (const Tree& fault : answer["faults"]) {
        all.push_back(fault["pointer"].get<std::string>() + " " + fault["code"].get<std::string>());
    }
    return all;
}

inline std::vector<std::string> faults_of(const std::string& verb, const Tree& body) {
    return faults_of(ask_for(verb, body));
}

using Gist = std::vector<std::string>;

}  // namespace toft::request
