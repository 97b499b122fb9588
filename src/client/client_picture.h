#pragma once
// The place as a householder knows it: house, building, the cable between, its parts numbered and
// told below, and nothing of the trade's symbols.

#include "paper/subject.h"

#include <string>
#include <vector>

namespace toft::paper {

/// Runs from the house that are drawn at most.
inline constexpr std::size_t most_pictures = 2;

struct ClientPicture {
    drawing::Scene scene;
    std::string legs;  ///< "1: 7 m fixed along a wall. 2: 21 m buried, 0.6 m deep."
};

/// A section along each run that leaves the house; without a scheme along the job's first run, as
/// the place stands.
std::vector<ClientPicture> client_pictures(const Subject& subject);

}  // namespace toft::paper
