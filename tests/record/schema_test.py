"""The records of the sample jobs hold to data/schema/record.schema.json, and the schema is a schema."""

import json
import subprocess
import sys
from pathlib import Path

try:
    import jsonschema
except ImportError:
    sys.exit("The Python package jsonschema is missing; install python3-jsonschema.")

SCHEMA = Path(__file__).resolve().parents[2] / "data/schema/record.schema.json"


def main():
    schema = json.loads(SCHEMA.read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    lines = subprocess.run(sys.argv[1:], check=True, capture_output=True, text=True).stdout.splitlines()
    if len(lines) != 4:
        sys.exit(f"Four records were expected, {len(lines)} came.")
    faults = [f"{number}: {list(fault.path)} {fault.message[:300]}"
              for number, line in enumerate(lines, 1) for fault in validator.iter_errors(json.loads(line))]
    changed = json.loads(lines[1])
    changed["record"]["floats"][0]["judged"]["mean_um"] = 0.5
    if validator.is_valid(changed):
        faults.append("a broken record was accepted")
    sys.exit("\n".join(faults) or 0)


if __name__ == "__main__":
    main()
