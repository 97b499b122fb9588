#include "support/cbc.h"

#include <fmt/format.h>

#include <sys/resource.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <vector>

namespace toft::support {

namespace {

using namespace spread;

std::string names_of(const Problem& problem, std::size_t b, std::size_t resource) {
    std::string text;
    const auto& options = problem.branches[b].options;
    for (std::size_t o = 0; o < options.size(); ++o) {
        text += fmt::format(" + {:.17g} x{}_{}", options[o].changes[resource].amount, b, o);
    }
    return text + "\n";
}

void require_linear(const Problem& problem) {
    for (const Branch& branch : problem.branches) {
        for (const Option& option : branch.options) {
            for (std::size_t i = 0; i < problem.resources; ++i) {
                const Change& change = option.changes[i];
                const double shared = branch.options.front().changes[i].leaves_at_most;
                if (change.sets || change.takes_at_most < no_limit || change.amount < 0 ||
                    change.leaves_at_most != shared) {
                    throw std::invalid_argument("not a linear problem");
                }
            }
        }
    }
}

std::vector<bool> ends_of(const Problem& problem) {
    std::vector<bool> ends(problem.branches.size(), true);
    for (const Branch& branch : problem.branches) {
        if (branch.parent != from_root) ends[branch.parent] = false;
    }
    return ends;
}

std::string limit_row(const Problem& problem, std::size_t b, std::size_t resource) {
    std::string text = fmt::format(" r{}_{}:", resource, b);
    for (std::size_t at = b; at != from_root; at = problem.branches[at].parent) {
        text += names_of(problem, at, resource);
    }
    const double limit = problem.branches[b].options.front().changes[resource].leaves_at_most;
    return text + fmt::format(" <= {:.17g}\n", limit - problem.at_root[resource]);
}

double seconds_of_children() {
    rusage use{};
    getrusage(RUSAGE_CHILDREN, &use);
    const auto seconds = [](const timeval& t) {
        return static_cast<double>(t.tv_sec) + 1e-6 * static_cast<double>(t.tv_usec);
    };
    return seconds(use.ru_utime) + seconds(use.ru_stime);
}

}  // namespace

std::string integer_program(const Problem& problem) {
    require_linear(problem);
    const std::vector<bool> ends = ends_of(problem);
    std::string price;
    std::string picks;
    std::string rows;
    std::string names;
    for (std::size_t b = 0; b < problem.branches.size(); ++b) {
        const auto& options = problem.branches[b].options;
        picks += fmt::format(" c{}:", b);
        for (std::size_t o = 0; o < options.size(); ++o) {
            price += fmt::format(" + {:.17g} x{}_{}\n", options[o].price, b, o);
            picks += fmt::format(" + x{}_{}", b, o);
            names += fmt::format(" x{}_{}\n", b, o);
        }
        picks += " = 1\n";
        for (std::size_t i = 0; i < problem.resources && ends[b]; ++i) {
            rows += limit_row(problem, b, i);
        }
    }
    return "Minimize\n obj:\n" + price + "Subject To\n" + picks + rows + "Binary\n" + names +
           "End\n";
}

CbcAnswer ask_cbc(const Problem& problem, double most_seconds) {
    const auto folder = std::filesystem::temp_directory_path();
    const std::string stem = fmt::format("toft_cbc_{}", static_cast<long>(getpid()));
    const auto program = folder / (stem + ".lp");
    const auto solution = folder / (stem + ".sol");
    std::filesystem::remove(solution);
    std::ofstream(program) << integer_program(problem);
    const std::string command =
        fmt::format("cbc {} ratio 0 allow 0 sec {} solve solu {} >/dev/null 2>&1", program.string(),
                    most_seconds, solution.string());
    const double began = seconds_of_children();
    const int code = std::system(command.c_str());
    const double took = seconds_of_children() - began;
    std::string first;
    std::getline(std::ifstream(solution), first);
    std::filesystem::remove(program);
    std::filesystem::remove(solution);
    if (code != 0 || first.empty()) throw std::runtime_error("cbc gave no answer");
    CbcAnswer answer;
    answer.seconds = took;
    answer.proved = first.rfind("Optimal", 0) == 0 || first.rfind("Infeasible", 0) == 0;
    const auto at = first.find("objective value ");
    if (at != std::string::npos && first.rfind("Infeasible", 0) != 0) {
        answer.price = std::strtod(first.c_str() + at + 16, nullptr);
    }
    return answer;
}

}  // namespace toft::support
