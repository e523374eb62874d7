import json
import unittest

from sample_tree import TreeTest
from sheet_languages import faults

GERMAN = (
    '<TS version="2.1" language="de"><context><name>bench</name><message><source>Go on</source>'
    "<translation{}>{}</translation></message></context></TS>"
)
PRESS_ON = {"en": "Press on 2", "de": "2-mal aufpressen"}


class SheetLanguages(TreeTest):
    def faults_of(self, *sheets, german=GERMAN.format("", "Weiter")):
        """`sheets`: issue and caution of each."""
        files = {"data/translations/shimwright_de.ts": german}
        for issue, text in sheets:
            sheet = {"name": "renewal", "issue": issue, "stages": [{"cautions": [{"hazard": text}]}]}
            files[f"data/sheets/renewal-{issue}.json"] = json.dumps(sheet)
        return faults(self.tree(files))

    def test_what_is_said_in_every_language(self):
        self.assertEqual(self.faults_of((1, PRESS_ON)), [])
        self.assertEqual(self.faults_of((1, {"en": "Stop", "de": "Stop"})), [])

    def test_a_language_that_is_missing_or_blank(self):
        place = "data/sheets/renewal-1.json: /stages/0/cautions/0/hazard"
        self.assert_one_fault(self.faults_of((1, {"en": "Press on"})), place, "it has no de")
        self.assert_one_fault(self.faults_of((1, {"en": "Press on", "de": " "})), place, "it has no de")

    def test_a_text_left_in_english_or_with_other_numbers(self):
        self.assert_one_fault(self.faults_of((1, {"en": "Press on", "de": "Press on"})), "its de is the English text")
        self.assert_one_fault(self.faults_of((1, {"en": "Press on 2", "de": "3-mal pressen"})), "other numbers")

    def test_a_language_nobody_has_begun_is_not_asked_for(self):
        begun = GERMAN.format(' type="unfinished"', "")
        self.assertEqual(self.faults_of((1, {"en": "Press on"}), german=begun), [])

    def test_an_earlier_issue_stays_as_it_is(self):
        self.assertEqual(self.faults_of((1, {"en": "Press on"}), (2, PRESS_ON)), [])
        self.assert_one_fault(self.faults_of((1, PRESS_ON), (2, {"en": "Press on"})), "renewal-2.json")


if __name__ == "__main__":
    unittest.main()
