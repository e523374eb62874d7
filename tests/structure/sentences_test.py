import unittest

from sample_tree import TreeTest
from sentences import faults

DE = "data/translations/shimwright_de.ts"


def message(source, said, attributes="", state=""):
    return f"<message{attributes}><source>{source}</source><translation{state}>{said}</translation></message>"


def file_of(*messages, language="de"):
    inside = f"<context><name>bench</name>{''.join(messages)}</context>"
    return f'<?xml version="1.0" encoding="utf-8"?>\n<TS version="2.1" language="{language}">{inside}</TS>'


TRUE = message("Trial %1 of {0}", "Probe %1 aus {0}")
UNFINISHED = ' type="unfinished"'
NUMBER = ' numerus="yes"'


class Sentences(TreeTest):
    def faults_with(self, *messages):
        return faults(self.tree({DE: file_of(TRUE, *messages)}))

    def test_as_it_should_be(self):
        self.assertEqual(self.faults_with(message("Save: ", "Speichern: "), message("&amp;Open", "Ö&amp;ffnen")), [])

    def test_a_language_nobody_has_begun(self):
        self.assertEqual(faults(self.tree({DE: file_of(message("Bench", "", state=UNFINISHED))})), [])

    def test_not_translated(self):
        for said, state in (("", UNFINISHED), ("Werkbank", UNFINISHED), ("", ""), (" ", "")):
            with self.subTest(said + state):
                self.assert_one_fault(self.faults_with(message("Bench", said, state=state)), DE, "“Bench”: it is not translated")

    def test_no_more_in_the_sources(self):
        for state in ("vanished", "obsolete"):
            fault = self.faults_with(message("Bench", "Werkbank", state=f' type="{state}"'))
            self.assert_one_fault(fault, "in the sources no more")

    def test_other_things_filled_in(self):
        for source, said in (
            ("%1 of %2", "%1 von %1"),
            ("%1 of %2", "%2"),
            ("Fit {0}", "Einlegen"),
            ("Fit", "{0} einlegen"),
            ("{0} and {0}", "{0}"),
        ):
            with self.subTest(said):
                self.assert_one_fault(self.faults_with(message(source, said)), "other things are filled in")

    def test_tags(self):
        fault = self.faults_with(message("&lt;b&gt;Stop&lt;/b&gt;", "&lt;b&gt;Halt"))
        self.assert_one_fault(fault, "its tags differ")

    def test_blanks_at_the_ends(self):
        for source, said in (("Reason: ", "Grund:"), ("; tilt", " ; Neigung"), ("One line", "Eine Zeile\n")):
            with self.subTest(said):
                self.assert_one_fault(self.faults_with(message(source, said)), "other blanks")

    def test_marks_of_keys(self):
        self.assert_one_fault(self.faults_with(message("&amp;Open", "Öffnen")), "marks a key")

    def test_numbers(self):
        one, many = "<numerusform>ein Auftrag</numerusform>", "<numerusform>%n Aufträge</numerusform>"
        self.assertEqual(self.faults_with(message("%n job(s)", one + many, NUMBER)), [])
        self.assert_one_fault(self.faults_with(message("%n job(s)", many, NUMBER)), "1 forms for a number")
        self.assert_one_fault(self.faults_with(message("%n job(s)", one + "<numerusform/>", NUMBER)), "not translated")

    def test_name_and_language_of_a_file(self):
        self.assert_one_fault(faults(self.tree({DE: file_of(TRUE, language="fr")})), "its language 'fr' differ")

    def test_a_language_that_lacks_a_sentence(self):
        french = file_of(TRUE, message("Bench", "Établi"), language="fr")
        tree = self.tree({DE: file_of(TRUE), "data/translations/shimwright_fr.ts": french})
        self.assert_one_fault(faults(tree), DE, "“Bench”: it is missing")

    def test_a_text_the_tools_do_not_see(self):
        for call in ('QCoreApplication::translate("bench", text)', "tr(text)", 'QCoreApplication::translate(\n "bench", text)'):
            with self.subTest(call):
                self.assert_one_fault(faults(self.tree({"ui/bench/a.cpp": "\n" + call})), "ui/bench/a.cpp:2", "see no text")
        for call in ('QCoreApplication::translate("bench", "Spot")', 'tr("Spot")', "word.substr(at)", 'tr(\n    "Spot")'):
            with self.subTest(call):
                self.assertEqual(faults(self.tree({"ui/bench/a.cpp": call})), [])

    def test_a_month_that_is_always_english(self):
        for line, count in (('day.toString("d MMM yyyy")', 1), ('QLocale().toString(day, "d MMM yyyy")', 0), ('day.toString("yyyy-MM-dd")', 0)):
            with self.subTest(line):
                self.assertEqual(len(faults(self.tree({"ui/bench/a.cpp": line}))), count)

    def test_a_mark_nobody_looks_up(self):
        marked = 'SHIMWRIGHT_TEXT("bench", "Spot") SHIMWRIGHT_TEXT(\n "job", "Spot")'
        tree = self.tree({"src/job/a.cpp": marked, "ui/widgets/say.cpp": '{"bench", "shim"}'})
        self.assert_one_fault(faults(tree), "src/job/a.cpp:1", "does not look up what 'job' says")


if __name__ == "__main__":
    unittest.main()
