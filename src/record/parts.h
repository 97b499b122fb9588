#pragma once
// The parts of a design record, each as blocks of a page.

#include "paper/subject.h"

#include <string>
#include <vector>

namespace toft::paper {

using Blocks = std::vector<page::Block>;

void append(Blocks& blocks, Blocks more);

/// A heading with a marked line for each of the words; nothing for none.
Blocks listed(const std::string& heading, const std::vector<std::string>& lines);

/// What was stated, what is taken for granted, what is still open.
Blocks record_of_facts(const Subject& subject);

/// How each building is to be earthed, step by step.
Blocks record_of_earthing(const Subject& subject);

/// What each run is made of and what is to be expected of it; its circuits.
Blocks record_of_scheme(const Subject& subject);

/// Every rule with value, limit and use; which device opens before which.
Blocks record_of_rules(const Subject& subject);

/// The price and the lines it is the sum of, labour by task.
Blocks record_of_price(const Subject& subject);

/// Every line of working once; where it is used again, its number stands.
Blocks record_of_workings(const Subject& subject);

/// What the figures rest on.
Blocks record_of_sources(const Subject& subject);

}  // namespace toft::paper
