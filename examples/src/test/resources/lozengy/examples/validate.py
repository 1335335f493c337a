"""Holds documents against schemas with Python's jsonschema.

python3 validate.py SCHEMAS DOCUMENTS

A document NAME--....json is held against the schema NAME; one that ends in .broken.json must fail.
Prints what is wrong, and at the end how many documents it has held.
"""

import json
import pathlib
import sys

import jsonschema

try:
    import referencing
except ImportError:  # of jsonschema before 4.18
    referencing = None


def absolute(schema, base):
    """The schema with its whole place in each reference, which older ones do not find otherwise."""
    if isinstance(schema, list):
        return [absolute(each, base) for each in schema]
    if not isinstance(schema, dict):
        return schema
    return {
        key: base + value if key == "$ref" and value.startswith("#") else absolute(value, base)
        for key, value in schema.items()
    }


schemas = {}
for file in pathlib.Path(sys.argv[1]).iterdir():
    schemas[file.stem] = json.loads(file.read_text(encoding="utf-8"))
validators = {}
for name, schema in schemas.items():
    jsonschema.Draft202012Validator.check_schema(schema)
if referencing:
    registry = referencing.Registry().with_resources(
        (each["$id"], referencing.Resource.from_contents(each)) for each in schemas.values()
    )
    for name, schema in schemas.items():
        validators[name] = jsonschema.Draft202012Validator(schema, registry=registry)
else:
    store = {each["$id"]: absolute(each, each["$id"]) for each in schemas.values()}
    for name, schema in schemas.items():
        whole = store[schema["$id"]]
        resolver = jsonschema.RefResolver(schema["$id"], whole, store=store)
        validators[name] = jsonschema.Draft202012Validator(whole, resolver=resolver)
wrong = 0
held = 0
for file in sorted(pathlib.Path(sys.argv[2]).iterdir()):
    document = json.loads(file.read_text(encoding="utf-8"))
    fault = next(validators[file.name.split("--")[0]].iter_errors(document), None)
    held += 1
    if (fault is None) == file.name.endswith(".broken.json"):
        wrong += 1
        print(file.name, "holds" if fault is None else fault.message[:300])
print("held", held)
sys.exit(1 if wrong else 0)
