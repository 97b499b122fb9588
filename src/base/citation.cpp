#include "base/citation.h"

namespace toft {

const char* basis_word(Basis basis) {
    switch (basis) {
        case Basis::published:
            return "published";
        case Basis::derived:
            return "derived";
        case Basis::common_practice:
            return "common practice";
        case Basis::memory:
            return "memory";
    }
    return "memory";
}

}  // namespace toft
