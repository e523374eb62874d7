#include <cmath>
#include <map>

#include "gather.h"

namespace shimwright::record {

namespace {

/// What one assembly knows of one bearing's shim.
struct Found {
  ShimUse use;
  bool came_off = false;  ///< the bearing, for this assembly: the shim of the one before does not stand any more
  [[nodiscard]] bool begins_anew() const {
    return came_off || !use.trials.empty() || !use.depths.empty() || !use.choices.empty();
  }
};

using ByAssembly = std::map<int, Found>;

/// Sorts each entry to its bearing and assembly.
class Sorter {
 public:
  Sorter(const Source& source, std::map<Side, ByAssembly>& found) : source_(source), found_(found) {}

  void take(const job::Entry& entry) {
    if (const auto* tried = std::get_if<job::ShimTried>(&entry.body)) {
      ShimUse& use = at(tried->side, tried->at);
      use.trials.push_back({stamp_of(source_, entry), tried->shim, tried->fit});
      use.fitted.clear();
    } else if (const auto* depths = std::get_if<job::DepthsRead>(&entry.body)) {
      ShimUse& use = at(depths->side, depths->at);
      use.depths.push_back(
          {stamp_of(source_, entry), depths->readings, depths->reference, depths->stamp, depths->instrument});
      use.fitted.clear();
    } else if (const auto* advised = std::get_if<job::Advised>(&entry.body)) {
      take(entry, *advised);
    } else if (const auto* chosen = std::get_if<job::ShimChosen>(&entry.body)) {
      ShimUse& use = at(chosen->side, chosen->at);
      use.choices.push_back({stamp_of(source_, entry), chosen->shim, chosen->thickness,
                             std::llround(chosen->u_mm * 1e6), chosen->by, chosen->chance_percent, chosen->reason});
      use.fitted = chosen->shim;
    } else if (const auto* read = std::get_if<job::Read>(&entry.body)) {
      take(entry, *read);
    } else if (const auto* begun = std::get_if<job::AssemblyBegun>(&entry.body)) {
      for (const Side side : begun->sides) {
        found_[side][begun->assembly].came_off = true;
      }
    }
  }

 private:
  ShimUse& at(Side side, const job::StepRef& where) { return found_[side][where.assembly].use; }

  void take(const job::Entry& entry, const job::Advised& advised) {
    const sheet::Step* step = step_named(source_, advised.at.step);
    if (step != nullptr && std::holds_alternative<sheet::FloatStep>(step->body)) {
      return;
    }
    at(advised.side, advised.at)
        .advice.push_back({stamp_of(source_, entry), advised.engine, advised.conclusion, advised.shim,
                           advised.candidates, advised.reason});
  }

  void take(const job::Entry& entry, const job::Read& read) {
    const sheet::Step* step = step_named(source_, read.at.step);
    if (step == nullptr || step->role != sheet::Role::new_shim || !step->side) {
      return;
    }
    for (const job::Reading& reading : read.readings) {
      at(*step->side, read.at).measured.push_back(reading_line(source_, entry, read.at, reading));
    }
  }

  const Source& source_;
  std::map<Side, ByAssembly>& found_;
};

/// An assembly that kept the shim joins the one before it.
void join(std::vector<ShimUse>& uses, Side side, int assembly, const ByAssembly& found) {
  const auto here = found.find(assembly);
  const bool anew = here != found.end() && here->second.begins_anew();
  const bool kept = !uses.empty() && uses.back().side == side;
  if (anew || (here != found.end() && !kept)) {
    uses.push_back(here->second.use);
    uses.back().side = side;
    uses.back().assemblies = {assembly};
  } else if (kept) {
    uses.back().assemblies.push_back(assembly);
    if (here != found.end()) {
      const auto& measured = here->second.use.measured;
      uses.back().measured.insert(uses.back().measured.end(), measured.begin(), measured.end());
    }
  }
}

}  // namespace

std::vector<ShimUse> shim_uses(const Source& source) {
  std::map<Side, ByAssembly> found;
  Sorter sorter(source, found);
  for (const job::Entry* entry : source.live) {
    sorter.take(*entry);
  }
  std::vector<ShimUse> uses;
  for (const auto& [side, by_assembly] : found) {
    for (int assembly = 1; assembly <= source.state.assembly; ++assembly) {
      join(uses, side, assembly, by_assembly);
    }
  }
  const std::map<Side, std::string>& standing = source.state.shims;
  for (std::size_t at = 0; at < uses.size(); ++at) {
    ShimUse& use = uses[at];
    if (at + 1 == uses.size() || uses[at + 1].side != use.side) {
      const auto stands = standing.find(use.side);
      use.fitted = stands == standing.end() ? std::string() : stands->second;
    }
    use.method = source.state.sheets.spec ? source.state.sheets.spec->side(use.side).method : use.method;
  }
  return uses;
}

std::vector<OldShim> old_shims(const Source& source) {
  std::vector<OldShim> found;
  for (const job::Entry* entry : source.live) {
    const auto* read = std::get_if<job::Read>(&entry->body);
    const sheet::Step* step = read == nullptr ? nullptr : step_named(source, read->at.step);
    if (step == nullptr || step->role != sheet::Role::old_shim || !step->side) {
      continue;
    }
    for (const job::Reading& reading : read->readings) {
      found.push_back({*step->side, reading_line(source, *entry, read->at, reading)});
    }
  }
  return found;
}

}  // namespace shimwright::record
