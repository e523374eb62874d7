"""Holds the printed pages of the demonstration jobs to those that somebody has looked at: every word in its place.

The approved words and places lie in tests/cli/approved, a picture of each page beside them for the eye. After a change
that is meant: SHIMWRIGHT_APPROVE=1 python3 tests/cli/approval_test.py PROGRAM writes them anew; look at the
pictures before they are committed.
"""
import json
import os
import re
import subprocess
import unittest
import xml.etree.ElementTree as tree

import program
from program import DEMO, SOURCE, run

APPROVED = SOURCE / "tests" / "cli" / "approved"
WORD = "{http://www.w3.org/1999/xhtml}word"
SEAL = re.compile(r"([0-9A-Z]{4}-){4}[0-9A-Z]{4}\.?")
LINE = 3  # points between what stands on one line in two weights
PARAGRAPH = 36  # points down to the last line that breaks by what is before it
PAGE = "{http://www.w3.org/1999/xhtml}page"


def words_of(pdf):
    """`page left top right bottom word` in points, rounded to halves: finer than an eye sees on paper."""
    told = subprocess.run(["pdftotext", "-bbox", pdf, "-"], check=True, capture_output=True).stdout
    lines = []
    for number, page in enumerate(tree.fromstring(told).iter(PAGE), 1):
        lines.append(f"{number} sheet {float(page.get('width')):.0f} {float(page.get('height')):.0f}")
        drawn_by_lot = None
        for word in page.iter(WORD):
            left, top, right, bottom = (round(float(word.get(edge)) * 2) / 2 for edge in ("xMin", "yMin", "xMax", "yMax"))
            if SEAL.fullmatch(word.text):
                drawn_by_lot = top
                lines.append(f"{number} {left:g} {top:g} - {bottom:g} a seal")
            elif drawn_by_lot is not None and -LINE < top - drawn_by_lot < PARAGRAPH:
                lines.append(f"{number} - - - - {word.text}")  # stands where the seal before it ends, or a line further
            else:
                lines.append(f"{number} {left:g} {top:g} {right:g} {bottom:g} {word.text}")
    return lines


class Approval(program.Bench):
    def holds(self, name, pdf):
        words = words_of(pdf)
        approved = APPROVED / f"{name}.txt"
        if os.environ.get("SHIMWRIGHT_APPROVE"):
            approved.parent.mkdir(exist_ok=True)
            approved.write_text("\n".join(words) + "\n", encoding="utf-8")
            for old in APPROVED.glob(f"{name}-*.png"):
                old.unlink()
            subprocess.run(["pdftoppm", "-r", "45", "-gray", "-png", pdf, APPROVED / name], check=True)
            return
        self.assertEqual(words, approved.read_text(encoding="utf-8").splitlines(),
                         f"{name}: the paper is not as it was approved; see the head of this test")

    def printed(self, script, *options):
        status, out, err = run("replay", script, "--store", self.store)
        self.assertEqual(status, 0, err)
        pdf = self.folder / "printed.pdf"
        status, _, err = run("record", json.loads(out[-1])["job"], "--store", self.store, *options, pdf)
        self.assertEqual(status, 0, err)
        return pdf

    def test_a_smooth_day_on_letter_paper_with_its_photos(self):
        self.holds("smooth-day-letter", self.printed(DEMO[0], "--paper", "letter", "--photos", "--pdf"))

    def test_trials_and_float_that_disagree(self):
        self.holds("bearing-not-home", self.printed(DEMO[1], "--pdf"))

    def test_a_sum_on_the_border(self):
        self.holds("sum-on-the-border", self.printed(DEMO[2], "--pdf"))

    def test_an_addendum_after_the_sealed_record(self):
        self.holds("slips-at-the-keyboard", self.printed(DEMO[4], "--pdf"))

    def test_the_draft_of_a_job_that_is_parked(self):
        self.holds("parked-draft", self.printed(self.until_it_is_parked(), "--pdf"))

    def test_the_slip_of_a_job_for_the_next_shift(self):
        self.holds("slip", self.printed(self.until_it_is_parked(), "--slip"))

    def until_it_is_parked(self):
        script = program.script(DEMO[3])
        parked = next(at for at, each in enumerate(script["commands"]) if each["command"] == "take_up")
        script["commands"] = script["commands"][:parked]
        path = self.folder / "scripts" / "parked.json"  # not beside the store, which has photos of its own
        path.parent.mkdir()
        path.write_text(json.dumps(script), encoding="utf-8")
        (path.parent / "photos").symlink_to(DEMO[3].parent / "photos")
        return path


if __name__ == "__main__":
    program.main()
