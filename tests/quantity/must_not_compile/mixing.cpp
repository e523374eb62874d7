// Compiled once as it is, which must work, and once with each offence, which must not: whatever else stands here is
// proved to be right, so only the offending line can be to blame.
#include "shimwright/quantity/quantity.h"

#ifndef OFFENCE
#define OFFENCE 0
#endif

using shimwright::quantity::Length;
using shimwright::quantity::micrometres;
using shimwright::quantity::Torque;

int main() {
  Length length = micrometres(930);
  Torque torque(13500);
#if OFFENCE == 1
  const auto sum = length + torque;
#elif OFFENCE == 2
  const auto difference = torque - length;
#elif OFFENCE == 3
  length += torque;
#elif OFFENCE == 4
  length = torque;
#elif OFFENCE == 5
  const bool smaller = length < torque;
#elif OFFENCE == 6
  const bool same = length == torque;
#elif OFFENCE == 7
  const auto sum = length + 5;
#elif OFFENCE == 8
  const Length bare = 5;
#elif OFFENCE == 9
  const double bare = length;
#elif OFFENCE == 10
  const auto area = length * length;
#endif
  length += micrometres(20);
  torque -= Torque(500);
  return length.count() + torque.count() == 13950 ? 0 : 1;
}
