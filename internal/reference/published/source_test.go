package published_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// root is the module's folder, seen from this package.
const root = "../../.."

// A declared is one exported name found in the source of the library.
type declared struct {
	name       string // "wave.Wave.Steepness"
	file       string
	start, end int // lines of the declaration
	doc        string
	variable   bool
}

// A sourceTree is what the tests need to know of the library's source.
type sourceTree struct {
	names   []declared                 // exported functions, methods and variables
	docs    map[string]string          // file -> all comments
	tests   map[string]map[string]bool // package name -> test functions in its folder
	imports map[string][]string        // folder -> imports outside tests
	folders map[string]string          // package name -> folder
}

// public lists the folders of the importable packages.
var public = []string{"wave", "wave/spectrum", "wave/ride", "wind", "tide", "tide/harmonic", "route", "route/passage"}

// exempt are methods that only make a type print or compare as such.
var exempt = map[string]bool{"String": true, "Error": true, "Unwrap": true, "Is": true, "GoString": true, "Format": true}

func readSource(t testing.TB) sourceTree {
	t.Helper()
	tree := sourceTree{docs: map[string]string{}, tests: map[string]map[string]bool{}, imports: map[string][]string{}, folders: map[string]string{}}
	fset := token.NewFileSet()
	for _, folder := range public {
		pkg := filepath.Base(folder)
		tree.folders[pkg] = folder
		tree.tests[pkg] = map[string]bool{}
		files, err := filepath.Glob(filepath.Join(root, folder, "*.go"))
		if err != nil {
			t.Fatal(err)
		}
		for _, path := range files {
			f, err := parser.ParseFile(fset, path, nil, parser.ParseComments)
			if err != nil {
				t.Fatal(err)
			}
			if strings.HasSuffix(path, "_test.go") {
				for _, d := range f.Decls {
					if fn, ok := d.(*ast.FuncDecl); ok && fn.Recv == nil {
						tree.tests[pkg][fn.Name.Name] = true
					}
				}
				continue
			}
			for _, c := range f.Comments {
				tree.docs[path] += c.Text()
			}
			for _, im := range f.Imports {
				tree.imports[folder] = append(tree.imports[folder], strings.Trim(im.Path.Value, `"`))
			}
			for _, d := range f.Decls {
				tree.names = append(tree.names, exportedNames(fset, pkg, path, d)...)
			}
		}
	}
	return tree
}

// exportedNames lists the exported functions, methods of exported types and
// variables of one declaration.
func exportedNames(fset *token.FileSet, pkg, path string, d ast.Decl) []declared {
	at := func(n ast.Node) (int, int) { return fset.Position(n.Pos()).Line, fset.Position(n.End()).Line }
	switch d := d.(type) {
	case *ast.FuncDecl:
		if !d.Name.IsExported() {
			return nil
		}
		name := d.Name.Name
		if d.Recv != nil {
			typ := d.Recv.List[0].Type
			if s, ok := typ.(*ast.StarExpr); ok {
				typ = s.X
			}
			if ix, ok := typ.(*ast.IndexExpr); ok {
				typ = ix.X
			}
			id, ok := typ.(*ast.Ident)
			if !ok || !id.IsExported() || exempt[name] {
				return nil
			}
			name = id.Name + "." + name
		}
		a, b := at(d)
		return []declared{{pkg + "." + name, path, a, b, d.Doc.Text(), false}}
	case *ast.GenDecl:
		if d.Tok != token.VAR {
			return nil
		}
		var out []declared
		for _, s := range d.Specs {
			v := s.(*ast.ValueSpec)
			for _, id := range v.Names {
				if !id.IsExported() || strings.HasPrefix(id.Name, "Err") {
					continue
				}
				a, b := at(v)
				doc := v.Doc.Text()
				if doc == "" {
					doc = d.Doc.Text()
				}
				out = append(out, declared{pkg + "." + id.Name, path, a, b, doc, true})
			}
		}
		return out
	}
	return nil
}

// citedKeys finds the bibliography keys cited in a comment: "Source: [Key]".
func citedKeys(doc string) []string {
	var keys []string
	for _, line := range strings.Split(doc, "\n") {
		if i := strings.Index(line, "Source"); i >= 0 && strings.Contains(line[i:], "[") {
			for _, m := range keyPattern.FindAllStringSubmatch(line[i:], -1) {
				keys = append(keys, m[1])
			}
		}
	}
	return keys
}

var keyPattern = regexp.MustCompile(`\[([A-Z][A-Za-z0-9&-]*[0-9A-Za-z])\]`)

// goFiles lists every Go file of the module outside nested modules.
func goFiles(t testing.TB) []string {
	t.Helper()
	var files []string
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && path != root {
			if _, err := os.Stat(filepath.Join(path, "go.mod")); err == nil || strings.HasPrefix(d.Name(), ".") {
				return filepath.SkipDir
			}
		}
		if strings.HasSuffix(path, ".go") {
			files = append(files, path)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// TestComparisonsArePositive: a test that fails on |got-want| > tolerance lets
// NaN pass. Tests of this module ask for |got-want| <= tolerance.
func TestComparisonsArePositive(t *testing.T) {
	negative := regexp.MustCompile(`^\s*if (.*; )?math\.Abs\([^{&]*-[^{&]*\) *>[^{&]*\{`)
	for _, path := range goFiles(t) {
		if !strings.HasSuffix(path, "_test.go") {
			continue
		}
		b, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		for i, line := range strings.Split(string(b), "\n") {
			if negative.MatchString(line) && !strings.Contains(line, "if !(") {
				t.Errorf("%s:%d: %s", strings.TrimPrefix(path, root+"/"), i+1, strings.TrimSpace(line))
			}
		}
	}
}

// TestDocComments: every exported name has a comment, and a comment on a
// function, method or variable begins with its name.
func TestDocComments(t *testing.T) {
	for _, d := range readSource(t).names {
		short := d.name[strings.LastIndex(d.name, ".")+1:]
		switch {
		case d.doc == "":
			t.Errorf("%s (%s:%d) has no comment", d.name, strings.TrimPrefix(d.file, root+"/"), d.start)
		case !d.variable && !strings.HasPrefix(d.doc, short+" "):
			t.Errorf("the comment of %s does not begin with its name", d.name)
		}
	}
}
