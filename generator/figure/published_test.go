package figure

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// rows reads a published table: comments, a head, rows.
func rows(t *testing.T, name string) [][]string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("../../testdata/published/figure", name))
	if err != nil {
		t.Fatal(err)
	}
	r := csv.NewReader(strings.NewReader(string(data)))
	r.Comment = '#'
	all, err := r.ReadAll()
	if err != nil || len(all) < 2 {
		t.Fatalf("%s: %v", name, err)
	}
	return all[1:]
}

func number(t *testing.T, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// The body is made of the published segments, and they close to the whole of stature.
func TestSegments(t *testing.T) {
	ours := map[string]float64{"foot height": footHeight, "shank": shankLength, "thigh": thighLength, "trunk": trunkLength,
		"head and neck": headAndNeck, "foot length": footLength, "upper arm": upperArm, "forearm": forearmLength}
	sum := 0.0
	for _, row := range rows(t, "segments.csv") {
		want := number(t, row[1])
		if have := ours[row[0]] / 100; math.Abs(have-want) > 1e-9 {
			t.Errorf("%s is %g of stature, published %g", row[0], have, want)
		}
		delete(ours, row[0])
		if row[2] == "yes" {
			sum += want
		}
	}
	if math.Abs(sum-1) > 1e-9 {
		t.Errorf("from floor to crown the segments are %.4f of stature, want 1.000", sum)
	}
	if len(ours) > 0 {
		t.Errorf("not in the table: %v", ours)
	}
	if drawn := lower + upper; math.Abs(drawn-trunkLength) > 1e-9 {
		t.Errorf("the two pieces of the trunk are %g long, want %g", drawn, float64(trunkLength))
	}
	if drawn := heelBack + rHeel + ballFore + toeFore + rToe; math.Abs(drawn-footLength) > 0.7 {
		t.Errorf("the foot is drawn %.1f long, published %.1f", drawn, footLength)
	}
}

// No joint is drawn further than some published normal range goes.
func TestJointRanges(t *testing.T) {
	widest := map[string]float64{}
	for _, row := range rows(t, "joint-ranges.csv") {
		if row[3] == "read" {
			widest[row[0]] = math.Max(widest[row[0]], number(t, row[1]))
		}
	}
	for motion, drawn := range map[string]float64{"knee flexion": kneeSpan.hi, "hip flexion": hipSpan.hi, "hip extension": -hipSpan.lo,
		"ankle dorsiflexion": ankleSpan.hi, "ankle plantar flexion": -flatFootSpan.lo, "shoulder flexion": shoulderSpan.hi, "elbow flexion": elbowSpan.hi} {
		if widest[motion] == 0 || drawn > widest[motion] {
			t.Errorf("%s is drawn to %g, the widest published range goes to %g", motion, drawn, widest[motion])
		}
	}
}
