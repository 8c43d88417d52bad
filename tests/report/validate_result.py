"""Runs the program on small studies and holds result.json to docs/result.schema.json.

validate_result.py PROGRAM SCHEMA STUDY...
Ends with 0 if every result fits, and if the schema refuses results that were spoilt on purpose.
"""

import copy
import json
import subprocess
import sys

import jsonschema


def result_of(program, study):
    run = subprocess.run([program, "check", study, "--json"], stdout=subprocess.PIPE, check=False)
    if run.returncode not in (0, 1, 4):
        sys.exit(f"{study}: exit code {run.returncode}")
    return json.loads(run.stdout, parse_constant=lambda word: sys.exit(f"{study}: {word}"))


def all_objects(value):
    if isinstance(value, dict):
        yield value
        for member in value.values():
            yield from all_objects(member)
    elif isinstance(value, list):
        for item in value:
            yield from all_objects(item)


def spoilt_copies(result):
    """Every object in turn with a member too many, and with one too few."""
    count = sum(1 for _ in all_objects(result))
    for place in range(count):
        grown = copy.deepcopy(result)
        list(all_objects(grown))[place]["surprise"] = 1
        yield f"object {place} with a member too many", grown
        shrunk = copy.deepcopy(result)
        target = list(all_objects(shrunk))[place]
        target.pop(next(iter(target)))
        yield f"object {place} with a member too few", shrunk


def facets_agree(blocker):
    """Facets take together what their surface takes, and their lists are of one length."""
    facets = blocker["facets"]
    assert len({len(column) for column in facets.values() if column is not None}) == 1
    at_worst = blocker["alone_at_worst_mm2"] + blocker["jointly_at_worst_mm2"]
    assert abs(sum(facets["at_worst_mm2"]) - at_worst) < 1e-6
    assert (facets["mean_mm2"] is None) == (blocker["mean_alone_mm2"] is None)


def lists_agree(result):
    """What a schema cannot say: lists of one length, places that exist."""
    for look in result["lamps"]:
        lengths = {len(areas) for areas in look["directions"].values()}
        assert len(lengths) == 1, f"{look['name']}: lists of lengths {lengths}"
        assert all(e["at"] < len(look["directions"]["h_deg"]) for e in look["exact"])
    for check in result["checks"]:
        for row in check["rows"]:
            for verdict in row["lamps"] + ([row["together"]] if row["together"] else []):
                for blocker in verdict["blockers"]:
                    facets_agree(blocker)
                directions = verdict["directions"]
                assert len({len(d) for d in directions.values()}) == 1
                nodes = len(result["lamps"][verdict["look"]]["directions"]["h_deg"])
                assert all(at < nodes for at in directions["at"])


def main():
    program, schema_file, *studies = sys.argv[1:]
    with open(schema_file, encoding="utf-8") as file:
        schema = json.load(file)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    for study in studies:
        result = result_of(program, study)
        for error in validator.iter_errors(result):
            sys.exit(f"{study}: {list(error.absolute_path)}: {error.message}")
        lists_agree(result)
        for what, spoilt in spoilt_copies(result):
            if validator.is_valid(spoilt):
                sys.exit(f"{study}: the schema does not notice {what}")
    print(f"{len(studies)} results fit the schema, and no spoilt one does")


main()
