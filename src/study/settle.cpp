#include "study/settle.h"

namespace toft::study {

bool Settler::settle(site::Answer answer, const FactName& name, bool yes_is_worse) {
    if (answer != site::Answer::unknown) return answer == site::Answer::yes;
    open_.push_back({name.pointer, name.says, 0, 1, "no or yes", false, nullptr});
    switch (corner_.at(name.pointer)) {
        case End::worse:
            return yes_is_worse;
        case End::better:
            return !yes_is_worse;
        case End::low:
            return false;
        case End::high:
            return true;
    }
    return yes_is_worse;
}

}  // namespace toft::study
