#include "request/body.h"

#include "base/text.h"

#include <cmath>

namespace toft::request {

namespace {

std::string words_of(const answer::Progress& p) {
    if (p.others) return "the cheapest is found; looking for others";
    std::string words = "looking for the cheapest";
    if (p.rounds > 0) words += fmt::format("; {} tried", p.rounds);
    if (std::isfinite(p.price)) words += fmt::format(", best £{}", fixed(p.price, 0));
    if (p.at_least > 0 && std::isfinite(p.at_least))
        words += fmt::format(", at least £{}", fixed(p.at_least, 0));
    return words;
}

}  // namespace

std::function<bool(const answer::Progress&)> told(const Asked& asked) {
    if (!asked.progress) return {};
    return [&asked](const answer::Progress& p) {
        return asked.progress(static_cast<double>(p.rounds), words_of(p));
    };
}

std::function<bool(long)> counted(const Asked& asked) {
    if (!asked.progress) return {};
    return [&asked](long solved) {
        return asked.progress(static_cast<double>(solved),
                              solved > 0
                                  ? fmt::format("all runs worked out together {} times", solved)
                                  : std::string("looking at what is not known"));
    };
}

}  // namespace toft::request
