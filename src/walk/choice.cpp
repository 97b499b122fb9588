#include "walk/choice.h"

namespace toft::walk {

const char* choice_word(Choice choice) {
    switch (choice) {
        case Choice::supply_earth:
            return "supply earth";
        case Choice::added_electrode:
            return "supply earth with an added electrode";
        case Choice::own_electrode:
            return "own electrode";
        case Choice::shared_electrode:
            return "shared electrode";
    }
    return "";
}

const char* bearing_word(Bearing bearing) {
    switch (bearing) {
        case Bearing::speaks_for:
            return "speaks for";
        case Bearing::neutral:
            return "neutral";
        case Bearing::speaks_against:
            return "speaks against";
        case Bearing::ruled_out:
            return "ruled out";
        case Bearing::required:
            return "required";
    }
    return "";
}

const char* known_word(Known known) {
    switch (known) {
        case Known::stated:
            return "stated";
        case Known::measured:
            return "measured";
        case Known::assumed:
            return "assumed";
        case Known::unknown:
            return "unknown";
    }
    return "";
}

const char* standing_word(Standing standing) {
    switch (standing) {
        case Standing::required:
            return "required";
        case Standing::open:
            return "open";
        case Standing::judgement:
            return "judgement";
        case Standing::not_known:
            return "not known";
        case Standing::ruled_out:
            return "ruled out";
    }
    return "";
}

bool offered(Choice choice, site::Earthing system) {
    if (choice == Choice::own_electrode) return true;
    return (choice == Choice::shared_electrode) == (system == site::Earthing::tt);
}

}  // namespace toft::walk
