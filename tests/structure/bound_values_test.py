import unittest

from bound_values import faults
from sample_tree import TreeTest

WRONG = (
    'rows("SELECT id FROM job WHERE number = \'" + number + "\'");',
    'rows(std::string("SELECT id FROM job WHERE number = ") + number);',
    'run(QStringLiteral("DELETE FROM job WHERE id = %1").arg(id));',
    'run(fmt::format("UPDATE job SET number = {}", number));',
    'run("ATTACH " + path);',
    'run("SELECT " + joined(table.columns) + " FROM job WHERE id = " + id);',
    'run("SELECT id "\n    "FROM job WHERE id = " + id);',
)
RIGHT = (
    'rows("SELECT id FROM job WHERE number = ?", {number});',
    'rows("SELECT " + joined(table.columns) + " FROM " + std::string(table.name) + " WHERE id = ?", {id});',
    'rows(std::string("SELECT ") + job_columns + " FROM job", {one + two});',
    'say("SELECTED " + name);',
    '// "SELECT " + name\n',
)


class BoundValues(TreeTest):
    def test_a_value_written_into_a_statement_is_found(self):
        for text in WRONG:
            with self.subTest(text):
                self.assertEqual(len(faults(self.tree({"src/store/a.cpp": text}))), 1)

    def test_bound_values_and_fixed_names_are_right(self):
        for text in RIGHT:
            with self.subTest(text):
                self.assertEqual(faults(self.tree({"src/store/a.cpp": text})), [])


if __name__ == "__main__":
    unittest.main()
