#include "walk/wording.h"

namespace toft::walk {

std::string answer_words(const char* what, site::Answer answer) {
    const char* word = answer == site::Answer::yes  ? ": yes"
                       : answer == site::Answer::no ? ": no"
                                                    : ": not stated";
    return std::string(what) + word;
}

std::string use_words(const site::Building& building) {
    return "use: " + (building.use ? site::word(*building.use) : std::string("not stated"));
}

std::string ohms_words(Ohms resistance) {
    const double ohms = resistance.number();
    return ohms >= 1000 ? significant(ohms / 1000, 4) + " kΩ" : significant(ohms, 4) + " Ω";
}

}  // namespace toft::walk
