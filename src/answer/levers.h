#pragma once
// The levers of a job in words. Page: docs/methods/levers.md.

#include "answer/answer.h"

#include <utility>

namespace toft::answer {

struct LeverAnswer {
    std::string key;
    std::string change;                    ///< what to do
    std::vector<std::string> places = {};  ///< of several runs: buildings that it is made at, by
                                           ///< name; none for the house and the wishes
    /// Of a change at several places: what each brings alone, pounds, by name, the most first.
    std::vector<std::pair<std::string, double>> singly = {};
    bool opens = false;          ///< nothing is sound without it
    double saves = 0;            ///< pounds with tax that the scheme is cheaper; below 0: dearer
    std::string cost_says;       ///< what the change itself costs, in words
    std::optional<double> cost;  ///< pounds with tax; none where it is not priced
    std::optional<double> net;   ///< saving less cost
    double headroom = 0;         ///< of the new scheme
    int dependability = 0;
    std::string scheme_key, scheme;  ///< that is then recommended
    double total = 0;                ///< its price with tax
    std::string brings;              ///< in words
};

struct LeversAnswer {
    std::string job;
    bool sound = false;
    bool conditional = false;        ///< not sound, but may be once facts are known
    std::string scheme_key, scheme;  ///< recommended as things stand; empty for none
    double total = 0;
    double headroom = 0;
    std::vector<LeverAnswer> levers;
    std::size_t tried = 0;
    bool stopped = false;  ///< by who asked: some changes were not tried
    bool proved = true;    ///< of several runs: each solution was proved to be the cheapest
    std::vector<std::string> cautions;
};

/// Solves the (valid) job under every change that its survey allows.
LeversAnswer levers(const Question& question);

}  // namespace toft::answer
