#pragma once
// The words of an answer: what to do first, then why.

#include "answer/answer.h"
#include "tree/feeding.h"

#include <string>

namespace toft::answer {

/// "on three phases ", "on L2 "; nothing where there is no choice.
std::string phases_words(const RunAnswer& run);

/// "Feed it with 3-core 10 mm² armoured cable from a 32 A fuse …": the scheme as one would say it.
std::string sentence_of(const SchemeAnswer& scheme);

/// The scheme on one line: "3-core 10 mm², core and armour, supply earth, 32 A fuse, tails".
std::string short_words(const SchemeAnswer& scheme);

/// What a near miss missed by.
std::string nearest_sentence(const search::Dropped& dropped);

/// Cautions that belong to every job; the last says what the prices of that book are worth.
std::vector<std::string> standing_cautions(const price::Book& book);

/// Cautions, duties to tell others, and what needs a specialist, for one scheme.
void add_duties(const study::Setting<Silent>& setting, SchemeAnswer& scheme);

/// What was found wrong at what is there: who must know, what is done first and for how much, what
/// is merely recorded. Adds it to the scheme's duties, work and cautions.
void add_found(const study::Setting<Silent>& setting, const price::Book& book,
               SchemeAnswer& scheme);

/// The same of runs of the job as stated that are not in it as built: what lies there stays there
/// unless somebody parts it.
void add_found_unbuilt(const tables::Catalogue& catalogue, const site::Job& stated,
                       const site::Job& built, SchemeAnswer& scheme);

/// Which run was chosen for each building that has several, and what the others come to. Ranks are
/// left open.
std::vector<FeedAnswer> feeds_of(const site::Job& job, const tree::Feedings& found);

/// Trenches that runs of a job as built share.
std::vector<TrenchAnswer> trenches_of(const site::Job& built);

}  // namespace toft::answer
