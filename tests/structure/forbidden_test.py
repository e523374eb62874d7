import unittest

from forbidden import RULES, faults
from sample_tree import TreeTest

# In parts, or this file would be at fault itself.
SLEEP = "sle" + "ep"
WAIT = "qWa" + "it"

# One case at least for each rule, in the order of the rules.
WRONG = (
    ("src/job/a.cpp", "return found.value();"),
    ("src/job/b.cpp", "auto* a = new Widget(1);"),
    ("ui/bench/c.cpp", "delete page;"),
    ("tests/store/d_test.cpp", f"std::this_thread::{SLEEP}_for(1s);"),
    ("ui/bench/e.cpp", "auto box = make<QDoubleSpinBox>();"),
    ("src/cli/f.cpp", "const double x = text.toDouble();"),
    ("src/store/g.cpp", "throw 1;"),
    ("src/job/h.cpp", "const auto now = std::chrono::system_clock::now();"),
)
RIGHT = {
    "src/store/a.cpp": "auto text = query.value(0).value<QString>(); A(const A&) = delete; // new value()\n",
    "src/store/b.cpp": 'say("a new clutch; delete nothing; throw it away");\nvoid* operator new(std::size_t);\n',
    "ui/bench/c.cpp": "auto* label = new QLabel(this);\n",
    "tests/store/d_test.cpp": "CHECK(found.value() == 3); CHECK_THROWS(f());\n",
    "tests/ui/d_test.cpp": f"CHECK(QTest::{WAIT}ForWindowExposed(&window)); a{SLEEP}(1); {SLEEP}less(2);\n",
    "src/store/e.cpp": "auto now = std::chrono::system_clock::now();\n",
    "src/store/f.cpp": "std::unique_ptr<Lock> lock(new Lock(path)); return std::unique_ptr<a::Lock>(\n  new a::Lock());\n",
    "src/job/f.cpp": "int news = renew; int valued = values();\n",
}


class Forbidden(TreeTest):
    def test_each_rule_has_a_case(self):
        self.assertEqual(len(WRONG), len(RULES))

    def test_each_case_breaks_its_rule(self):
        for (name, text), rule in zip(WRONG, RULES):
            with self.subTest(text):
                self.assert_one_fault(faults(self.tree({name: "\n" + text})), f"{name}:2", rule.reason)

    def test_other_ways_to_write_it(self):
        for name, text in (
            ("ui/shell/a.cpp", "found->value( )"),
            ("src/store/a.cpp", "auto list = std::vector<Lock*>{new Lock()};"),
            ("tests/ui/bench/a_test.cpp", f"QTest::{WAIT}(50);"),
            ("tests/store/b_test.cpp", f"QThread::m{SLEEP}(5);"),
            ("tests/store/c_test.cpp", f"QThread::{SLEEP}(1);"),
            ("tests/store/c_test.cpp", f"u{SLEEP}(5);"),
            ("tests/store/c_test.cpp", f"nano{SLEEP} (&time, nullptr);"),
            ("tests/store/c_test.cpp", f"std::this_thread::{SLEEP}_until(end);"),
            ("tests/store/c_test.cpp", f"S{SLEEP[1:]}(5);"),
            ("src/quantity/c.cpp", "std::strtod(text, nullptr);"),
            ("src/record/d.cpp", 'std::ofstream file("a");'),
        ):
            with self.subTest(text):
                self.assertEqual(len(faults(self.tree({name: text}))), 1)

    def test_what_only_looks_like_it(self):
        self.assertEqual(faults(self.tree(RIGHT)), [])


if __name__ == "__main__":
    unittest.main()
