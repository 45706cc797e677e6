label = In a pressure cooker at { $psi } psi
step = Short of time: { $cooker } at { $gauge } does it in { $time }, then let the pressure fall by itself.
because = A pressure cooker at { $gauge } reaches { $inside } inside here, well over any open pot.
caution = In a pressure cooker keep to its booklet: how full, the vent, and no opening before the pressure has fallen.
