# make demo   an environment, shopdraw in it, and the first sample desk exported to build/demo
# make test   the same with the test tools, then every check and test
# make bench  prints times and sizes
# make translations  renews the sources and the compiled translations of the editor
#
# Needs make, Python 3.11 or later and its pip; everything else comes from here.

PYTHON ?= $(shell command -v python3.11 || command -v python3)
VENV := .venv
IN := $(VENV)/bin/python
SAMPLE := $(firstword $(sort $(wildcard sample_projects/*.piece)))
WORKERS ?= 2

# A package run from its checkout isn't compiled by pip; done here, also where Python was told to keep no bytecode,
# so that the first run is as quick as the next one.
COMPILED = $(IN) -m compileall -q shopdraw

# Both names: older pips read the first one for build requirements too, newer ones the second.
export PIP_CONSTRAINT := $(CURDIR)/constraints.txt
export PIP_BUILD_CONSTRAINT := $(CURDIR)/constraints.txt
export PIP_DISABLE_PIP_VERSION_CHECK := 1
export QT_QPA_PLATFORM ?= offscreen

.PHONY: demo test bench translations clean

demo: $(VENV)/installed
	@$(PYTHON) tests/system_packages.py --advise
	@$(COMPILED)
	$(VENV)/bin/shopdraw export $(SAMPLE) build/demo
	@echo "The desk's sheets, templates, drawing, router files and lists are in build/demo"

test: $(VENV)/installed-tests
	@$(PYTHON) tests/system_packages.py --tests
	@$(COMPILED)
	$(VENV)/bin/ruff check .
	$(VENV)/bin/mypy
	$(VENV)/bin/lint-imports
	$(IN) -m pytest -n $(WORKERS) -q

bench: $(VENV)/installed-tests
	@$(COMPILED)
	@for each in tests/benchmarks/*.py; do echo "== $$each"; $(IN) $$each || exit 1; done

# New words stand in the source of each language marked as unfinished: write them there, then make this again.
translations: $(VENV)/installed-tests
	$(IN) tests/translations.py

# Debian keeps the parts of venv that bring pip in a package of its own (python3-venv). So the environment is made
# bare, and the pip that is there puts one into it; where that pip is too old for it, Python's own copy does.
$(VENV)/made:
	@$(PYTHON) -c 'import sys; sys.exit(sys.version_info < (3, 11))' || \
	    { echo "shopdraw needs Python 3.11 or later; say where it is: make PYTHON=/path/to/python3.11" >&2; exit 1; }
	$(IN) -m pip --version >/dev/null 2>&1 || $(PYTHON) -m venv --clear --without-pip $(VENV)
	$(IN) -m pip --version >/dev/null 2>&1 || $(PYTHON) -m pip --python $(IN) install -q pip || $(IN) -m ensurepip || \
	    { echo "pip is missing. On Debian 12: sudo apt-get install -y python3-pip" >&2; exit 1; }
	@touch $@

$(VENV)/installed: $(VENV)/made pyproject.toml constraints.txt
	$(IN) -m pip install -q -e .
	@touch $@

$(VENV)/installed-tests: $(VENV)/made pyproject.toml constraints.txt
	$(IN) -m pip install -q -e '.[test]'
	@touch $@ $(VENV)/installed

clean:
	rm -rf build dist .mypy_cache .pytest_cache .ruff_cache .import_linter_cache .hypothesis
