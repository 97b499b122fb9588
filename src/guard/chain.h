#pragma once
// The residual current devices in a row from the intake to a circuit of the outbuilding, and
// whether one further out is sure to act before those in front of it: in time (the one in front is
// delayed, type S) and in current (three times the rating). BS 7671 536.4.1.4; on TT 531.3.5.3.2.
// Page: docs/methods/residual-chain.md.

#include "guard/sort.h"

#include <array>
#include <vector>

namespace toft::guard {

/// Where a device stands.
enum class Post { house, before, head, circuit };

const char* post_words(Post post);

struct Rcd {
    Post post = Post::circuit;
    Amperes sensitivity{};
    bool delayed = false;               ///< known to be
    bool there_known = true;            ///< false where nobody looked whether it is there
    bool delay_known = true;            ///< false where nobody read it
    std::optional<site::RcdType> type;  ///< none where nobody read it
};

/// From the intake out; the last is the circuit's own.
struct Chain {
    std::array<Rcd, 3> rcd;
    std::size_t count = 0;

    const Rcd* at(Post post) const {
        for (std::size_t i = 0; i < count; ++i) {
            if (rcd[i].post == post) return &rcd[i];
        }
        return nullptr;
    }
};

/// The chain of a scheme. Fed from an outbuilding it starts with the nearest RCD on the runs
/// before. `behind_rcd`: of the house's board, the largest it may be (the
/// setting's); it counts where the run is fed from that board.
Chain chain_of(const View& view, const study::RunScheme& scheme, Amperes behind_rcd);

/// The one further out is sure to act first: by time and by current.
bool in_time(const Rcd& upstream, const Rcd& downstream);
bool in_current(const View& view, const Rcd& upstream, const Rcd& downstream);
inline bool selective(const View& view, const Rcd& upstream, const Rcd& downstream) {
    return in_time(upstream, downstream) && in_current(view, upstream, downstream);
}

/// Some device in front of the circuits' own may act with them or in their place.
bool one_takes_all(const View& view, const Chain& chain);

/// Two devices in a row, judged.
struct Pair {
    Rcd upstream;
    Rcd downstream;
    bool time = false;
    bool current = false;
    const char* says = "";
};

std::vector<Pair> pairs_of(const View& view, const Chain& chain);

/// A remark on the row where the earth is an electrode; `settled` when nothing is left to do.
struct Remark {
    const tables::Footing* footing = nullptr;
    const char* says = "";
    bool settled = false;
};

/// On TT supplies and for buildings with an electrode of their own; `ra_most` is the largest the
/// electrode that clears faults there may be.
std::vector<Remark> remarks_of(const View& view, const Chain& chain, Ohms ra_most);

}  // namespace toft::guard
